const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";
const LENGTH = 32;

/** Letters and digits that nobody can guess, for a page's nonce. */
export function randomText(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(LENGTH));
  return Array.from(bytes, (byte) => LETTERS[byte % LETTERS.length]).join("");
}

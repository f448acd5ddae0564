/** Control characters as their signs (U+2400 on), and those that turn the direction of text by name. */
export function harmless(text: string): string {
  return text
    .replace(/\p{Cc}/gu, (found) => {
      const code = found.charCodeAt(0);
      return code < 0x20 ? String.fromCharCode(0x2400 + code) : named(found);
    })
    .replace(/[\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g, named);
}

function named(character: string): string {
  return `<U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}>`;
}

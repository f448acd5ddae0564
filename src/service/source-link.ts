/** A web address without its scheme, as sources name them: `tileletter.com/what-is-minimum-grout-joint`. */
const ADDRESS = /(?<![\w.-])(?:[a-z0-9-]+\.)+(?:com|org|net|ie|co\.uk)\/[^\s;,()"]+/;

/** The address of a published source, or null where it names none. */
export function sourceLink(source: string): string | null {
  const address = ADDRESS.exec(source)?.[0];
  return address === undefined ? null : `https://${address}`;
}

/** The styles that a report uses. */
export type Style = "error" | "warning" | "information" | "place" | "quiet" | "strong";

/** Puts a text in a style, or leaves it as it is. */
export type Paint = (style: Style, text: string) => string;

const CODES: Readonly<Record<Style, string>> = {
  error: "1;31",
  warning: "1;33",
  information: "1;36",
  place: "1",
  quiet: "2",
  strong: "1",
};

/** A paint of terminal colours, or one that changes nothing. */
export function paintFor(colours: boolean): Paint {
  if (!colours) return (_style, text) => text;
  return (style, text) => (text === "" ? "" : `\u001b[${CODES[style]}m${text}\u001b[0m`);
}

/**
 * Whether to write colours: on a terminal, unless NO_COLOR (no-color.org) or a dumb terminal says
 * otherwise; FORCE_COLOR goes before both, as Node itself has it.
 */
export function usesColours(
  env: Readonly<Record<string, string | undefined>>,
  isTerminal: boolean | undefined,
): boolean {
  const { FORCE_COLOR: force, NO_COLOR: no, TERM: term } = env;
  if (force !== undefined) return force !== "0" && force !== "false";
  if (no !== undefined && no !== "") return false;
  return isTerminal === true && term !== "dumb";
}

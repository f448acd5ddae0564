import { type IToken, Lexer, type TokenType } from "chevrotain";
import { LEXED } from "./tokens.js";

/** What stands in a text itself, and not for several others. */
const KINDS = LEXED.filter(({ PATTERN }) => PATTERN !== Lexer.NA);

/** Any token, wherever the last one ended: a group for each kind, and no groups within. */
const ANY = new RegExp(KINDS.map((kind) => `(${sourceOf(kind)})`).join("|"), "y");

function sourceOf({ PATTERN }: TokenType): string {
  return PATTERN instanceof RegExp ? PATTERN.source : `\\${PATTERN as string}`;
}

/**
 * The tokens of a text; spaces and comments are left out. Chevrotain's own lexer makes tables of all
 * characters first, which takes longer than to read a plan; both find the same tokens.
 */
export function tokenise(text: string): IToken[] {
  const tokens: IToken[] = [];
  ANY.lastIndex = 0;
  for (let found = ANY.exec(text); found; found = ANY.exec(text)) {
    const [image] = found;
    const tokenType = KINDS[found.indexOf(image, 1) - 1]!;
    if (tokenType.GROUP === Lexer.SKIPPED) continue;
    const startOffset = found.index;
    tokens.push({
      image,
      startOffset,
      endOffset: startOffset + image.length - 1,
      tokenType,
      tokenTypeIdx: tokenType.tokenTypeIdx!,
    });
  }
  return tokens;
}

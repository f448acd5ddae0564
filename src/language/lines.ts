import type { IToken } from "chevrotain";
import type { LineTable } from "./line-table.js";
import * as T from "./tokens.js";

/** What stands between two line ends or braces, and what ends it. */
export interface Line {
  readonly tokens: readonly IToken[];
  readonly ending: "line" | "open" | "close";
  /** The brace that ends it. */
  readonly brace: IToken | null;
  /** The column it starts in, or null when something else stands before it on its line. */
  readonly indent: number | null;
}

/** Cuts the tokens of a text into lines; a `{` alone on a line belongs to the line before it. */
export function cutLines(tokens: readonly IToken[], table: LineTable): Line[] {
  const lines: Line[] = [];
  let current: IToken[] = [];
  let lastLine = -1;

  const end = (ending: Line["ending"], brace: IToken | null): void => {
    const before = lines.at(-1);
    if (current.length === 0 && ending === "open" && before?.ending === "line") {
      lines[lines.length - 1] = { ...before, ending, brace };
      return;
    }
    const first = current[0] ?? brace;
    if (!first) return;
    const { line, character } = table.position(first.startOffset);
    const indent = line === lastLine ? null : character;
    lastLine = table.lineOf(endOf(brace ?? current.at(-1)!));
    lines.push({ tokens: current, ending, brace, indent });
    current = [];
  };

  for (const token of tokens) {
    if (token.tokenType === T.LineEnd) end("line", null);
    else if (token.tokenType === T.OpenBrace) end("open", token);
    else if (token.tokenType === T.CloseBrace) end("close", token);
    else current.push(token);
  }
  end("line", null);
  return lines;
}

/** The offset just past a token. */
export function endOf(token: IToken): number {
  return token.startOffset + token.image.length;
}

/** Whether each brace has its partner; where not, the layout goes by indentation too. */
export function areBracesMatched(tokens: readonly IToken[]): boolean {
  let depth = 0;
  for (const { tokenType } of tokens) {
    if (tokenType === T.OpenBrace) depth++;
    else if (tokenType === T.CloseBrace && --depth < 0) return false;
  }
  return depth === 0;
}

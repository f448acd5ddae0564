import type { IRecognitionException } from "chevrotain";
import { buildTree } from "./build-tree.js";
import { layOut } from "./layout.js";
import type { LineTable } from "./line-table.js";
import { tableLines } from "./line-table.js";
import { endOf } from "./lines.js";
import { tokenise } from "./lexer.js";
import { readTokens } from "./reader.js";
import type { SyntaxTree } from "./syntax.js";
import type { SyntaxProblem } from "./syntax-problem.js";

/** Two million characters are some fifty thousand lines: no plan, and the reader would only be held up. */
const LONGEST_TEXT = 2_000_000;

/** Reads a text into its syntax tree. Never throws: what can't be understood is among its problems. */
export function parse(text: string): SyntaxTree {
  const lines = tableLines(text);
  if (text.length > LONGEST_TEXT) {
    const message = `found a text of ${text.length} characters, wanted at most ${LONGEST_TEXT}`;
    const problem: SyntaxProblem = { code: "syntax/too-long", message, start: 0, end: 0 };
    return { text, lines, statements: [], problems: [problem] };
  }
  const laidOut = layOut(tokenise(text), lines);
  const { cst, errors } = readTokens(laidOut.tokens);
  const problems = [...laidOut.problems, ...errors.map(problemOf)];
  const statements = buildTree(cst, problems);
  return { text, lines, statements, problems: firstOfEachLine(problems, lines) };
}

function problemOf({ message, token }: IRecognitionException): SyntaxProblem {
  const start = token.startOffset;
  return { code: "syntax/unexpected", message, start, end: endOf(token) };
}

/** In order of the text, and of several problems of one line the first: the others mostly follow from it. */
function firstOfEachLine(problems: readonly SyntaxProblem[], lines: LineTable): SyntaxProblem[] {
  const told = new Set<string>();
  return [...problems]
    .sort((a, b) => a.start - b.start)
    .filter(({ code, start }) => {
      const key = `${code === "syntax/unclosed" ? "block" : "line"} ${lines.lineOf(start)}`;
      if (told.has(key)) return false;
      told.add(key);
      return true;
    });
}

import type { IToken } from "chevrotain";
import { endOf } from "./lines.js";
import { nearest } from "./nearest.js";
import type { SyntaxProblem } from "./syntax-problem.js";
import * as T from "./tokens.js";
import type { BlockKind, Starter } from "./vocabulary.js";
import { STATEMENTS } from "./vocabulary.js";
import { joinWords, nameToken } from "./wanted.js";

const PLACE: Readonly<Record<BlockKind, string>> = {
  plan: "at the top of a plan",
  tile: "in a tile",
  trim: "in a trim",
  saw: "in the saw",
  mortar: "in the mortar",
  grout: "in the grout",
  sealant: "in the sealant",
  wall: "in a wall",
  opening: "in an opening",
  lay: "in a lay",
  prefer: "among the wishes",
  rules: "in the rules",
};

/** What to say of a line that begins no statement of its block, and the statement that was probably meant. */
export function tellStatement(
  first: IToken,
  kind: BlockKind,
): { readonly problem: SyntaxProblem; readonly meant: Starter | undefined } {
  const known = STATEMENTS[kind];
  const isWord = T.isWord(first);
  const elsewhere = isWord ? placesOf(first.image) : [];
  const guess = isWord && elsewhere.length === 0 ? nearest(first.image, known.keys()) : null;
  const message = `found ${nameToken(first)}, wanted ${wantedOf(kind)}${hintOf(elsewhere, guess)}`;
  const problem: SyntaxProblem = {
    code: "syntax/statement",
    message,
    start: first.startOffset,
    end: endOf(first),
  };
  return { problem, meant: guess === null ? undefined : known.get(guess) };
}

function wantedOf(kind: BlockKind): string {
  if (kind === "rules") return "the name of a limit";
  const words = [...STATEMENTS[kind].keys()].map((word) => `\`${word}\``);
  return `a statement ${PLACE[kind]}: ${joinWords(words)}`;
}

function placesOf(word: string): string[] {
  const kinds = Object.keys(STATEMENTS) as BlockKind[];
  return kinds.filter((kind) => STATEMENTS[kind].has(word)).map((kind) => PLACE[kind]);
}

function hintOf(elsewhere: readonly string[], guess: string | null): string {
  if (elsewhere.length > 0) return `; it belongs ${joinWords(elsewhere)}`;
  return guess === null ? "" : `; did you mean \`${guess}\`?`;
}

import type { IParserErrorMessageProvider, IToken, TokenType } from "chevrotain";
import { didYouMean } from "./nearest.js";
import { isWord, LineEnd } from "./tokens.js";
import { INNER_WORDS } from "./vocabulary.js";

/** What the grammar says of a line that it can't follow: the text found and what was wanted there. */
export const wantedMessages: IParserErrorMessageProvider = {
  buildMismatchTokenMessage: ({ expected, actual }) => foundAndWanted(actual, [expected]),
  buildNoViableAltMessage: ({ expectedPathsPerAlt, actual, customUserDescription }) =>
    foundAndWanted(
      actual[0],
      expectedPathsPerAlt.flatMap((paths) => paths.flatMap(([first]) => first ?? [])),
      customUserDescription,
    ),
  buildEarlyExitMessage: ({ expectedIterationPaths, actual }) =>
    foundAndWanted(
      actual[0],
      expectedIterationPaths.flatMap(([first]) => first ?? []),
    ),
  buildNotAllInputParsedMessage: ({ firstRedundant }) => foundAndWanted(firstRedundant, [LineEnd]),
};

function foundAndWanted(
  actual: IToken | undefined,
  expected: readonly TokenType[],
  description?: string,
): string {
  const labels = expected.map((type) => type.LABEL ?? type.name);
  const wanted = description ?? joinWords([...new Set(labels)]);
  return `found ${nameToken(actual)}, wanted ${wanted}${guessWord(actual, labels)}`;
}

function guessWord(actual: IToken | undefined, labels: readonly string[]): string {
  if (!actual || !isWord(actual)) return "";
  // Where a line might end, it might also have gone on with any of the words.
  if (labels.includes(LineEnd.LABEL!)) return guessAnyWord(actual.image);
  const words = labels.filter((label) => label.startsWith("`")).map((label) => label.slice(1, -1));
  return didYouMean(actual.image, words);
}

function guessAnyWord(word: string): string {
  return INNER_WORDS.has(word) ? "" : didYouMean(word, INNER_WORDS.keys());
}

/** A token as messages call it. */
export function nameToken(token: IToken | undefined): string {
  if (!token || token.tokenType === LineEnd || token.image === "") return "the end of the line";
  return `\`${shorten(token.image)}\``;
}

/** `a`, `a or b`, `a, b or c`. */
export function joinWords(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} or ${words.at(-1)!}`;
}

const LONGEST_QUOTE = 40;

/** A quoted piece of text, cut where a message would run away. */
export function shorten(text: string): string {
  return text.length <= LONGEST_QUOTE ? text : `${text.slice(0, LONGEST_QUOTE - 1)}…`;
}

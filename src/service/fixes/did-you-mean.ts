import type { Fixer } from "./fix.js";

/** What the language guesses of a mistyped word. */
const GUESS = /; did you mean `([^`]+)`\?$/;

/** Replaces a mistyped word by the one that was probably meant. */
export const didYouMean: Fixer = (_state, diagnostic) => {
  const meant = GUESS.exec(diagnostic.message)?.[1];
  if (meant === undefined) return [];
  return [
    {
      title: `Write \`${meant}\``,
      mends: diagnostic,
      preferred: true,
      edits: [{ range: diagnostic.range, text: meant }],
    },
  ];
};

import type { Fixer } from "./fix.js";

const WANTED = /^found `[^`]+`, wanted `([^`]+)`$/;

/** Replaces what other programs make of a character, such as a ready-made fraction or a curly quote. */
export const plainCharacter: Fixer = ({ tree }, diagnostic) => {
  const wanted =
    diagnostic.code === "syntax/character" ? WANTED.exec(diagnostic.message)?.[1] : undefined;
  if (wanted === undefined) return [];
  const before = tree.text[tree.lines.offset(diagnostic.range.start) - 1] ?? "";
  // `5½` is 5 1/2, not 51/2.
  const gap = /\d/.test(before) && /^\d/.test(wanted) ? " " : "";
  return [
    {
      title: `Write \`${wanted}\``,
      mends: diagnostic,
      preferred: true,
      edits: [{ range: diagnostic.range, text: gap + wanted }],
    },
  ];
};

import type { Span } from "../language/index.js";

const WORD = /[\p{L}\p{N}_-]/u;

/** The word round an offset; empty where none is. */
export function wordAt(text: string, offset: number): Span {
  const isWord = (character: string | undefined): boolean =>
    character !== undefined && WORD.test(character);
  let [start, end] = [offset, offset];
  while (isWord(text[start - 1])) start--;
  while (isWord(text[end])) end++;
  return { start, end };
}

/// <reference lib="dom" />
import { make } from "./elements.js";

/** Words of which some are a plan's own: what stands between backticks is set as code. */
export function quoted(words: string): (Node | string)[] {
  return words.split("`").map((part, i) => (i % 2 === 0 ? part : make("code", {}, part)));
}

import type { Random } from "./random.js";

/** Bytes that a slip, an editor or a broken file may bring in. */
const STRAYS = [
  ...Array.from("{}()\"#:,;'/\\+-*.=<>|&%$@!?~^_ \t0123456789xXaezAZ"),
  "\n",
  "\r\n",
  "\r",
  "\u0000",
  "\u007f",
  "\ufeff",
  "\u00a0",
  "\u2028",
  "½",
  "″",
  "×",
  "é",
  "\ud83e",
  "🧱",
];

/** Words and numbers that turn up where they don't belong. */
const WORDS = [
  ..."wall tile trim lay plan units use let bed size at face thickness bond joint across up window".split(
    " ",
  ),
  ..."niche door hole frame inset movement measured corner free under over running stack full".split(
    " ",
  ),
  ..."allow rules off 0 -1 1/0 3 3/0 1e9 99999999999999999999 0.0000001 1' 14\" 5 8/7 { } }}".split(
    " ",
  ),
];

/** A text with one to four slips in its bytes, tokens or lines. */
export function mutate(text: string, random: Random): string {
  let mutated = text;
  for (let n = random.integer(1, 4); n > 0; n--) {
    mutated = random.pick([mutateBytes, mutateTokens, mutateLines])(mutated, random);
  }
  return mutated;
}

function mutateBytes(text: string, random: Random): string {
  const at = random.integer(0, text.length);
  const until = Math.min(text.length, at + random.integer(0, random.chance(0.1) ? 60 : 2));
  const stray = random.chance(0.6) ? random.pick(STRAYS) : "";
  return text.slice(0, at) + stray + text.slice(until);
}

function mutateTokens(text: string, random: Random): string {
  const tokens = text.match(/\s+|[\w-]+|[^\s\w]/g) ?? [];
  return shuffled(tokens, random, random.pick(WORDS)).join("");
}

function mutateLines(text: string, random: Random): string {
  const lines = text.split("\n");
  const word = `${random.pick(WORDS)} ${random.pick(WORDS)} ${random.pick(WORDS)}`;
  return shuffled(lines, random, word).join("\n");
}

/** A list with one of its items left out, doubled, changed for another, moved or overwritten. */
function shuffled(list: readonly string[], random: Random, stray: string): string[] {
  if (list.length === 0) return [stray];
  const changed = [...list];
  const [i, j] = [random.integer(0, list.length - 1), random.integer(0, list.length - 1)];
  const kind = random.integer(0, 4);
  if (kind === 0) changed.splice(i, 1);
  if (kind === 1) changed.splice(i, 0, list[i]!);
  if (kind === 2) [changed[i], changed[j]] = [list[j]!, list[i]!];
  if (kind === 3) changed.splice(j, 0, ...changed.splice(i, random.integer(1, 3)));
  if (kind === 4) changed[i] = stray;
  return changed;
}

/** Numbers between 0 and 1 that are the same at every run: mulberry32, a public domain generator. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

type Random = () => number;
type Mutation = (text: string, random: Random) => string;

const CHARACTERS = [
  ..."{}()\"'#,:=+-*/x019 \n\t.".split(""),
  "\0",
  "\r",
  "\u2028",
  "\ufeff",
  "é",
  "½",
  "\ud83d",
  "\u{1f6c1}",
];
const WORDS = [
  "wall",
  "tile",
  "lay",
  "window",
  "movement",
  "over",
  "sill",
  "0",
  "-1",
  "99999999999",
  "1/0",
  "5 8/7",
  `1' 14"`,
  "1e5",
  "%",
  "50stone",
  "covers",
  "price",
  "constructor",
  "__proto__",
  '"open',
  "}",
  "{",
];

function pick<Thing>(things: readonly Thing[], random: Random): Thing {
  return things[Math.floor(random() * things.length)]!;
}

/** Puts `middle` in place of a stretch of the text. */
function splice(text: string, at: number, length: number, middle: string): string {
  return text.slice(0, at) + middle + text.slice(at + length);
}

/** Changes one of the pieces that a text is made of. */
function onPieces(
  pattern: RegExp,
  change: (pieces: string[], at: number, random: Random) => void,
): Mutation {
  return (text, random) => {
    const pieces = text.match(pattern) ?? [];
    if (pieces.length > 0) change(pieces, Math.floor(random() * pieces.length), random);
    return pieces.join("");
  };
}

const TOKENS = /\s+|[\w.]+|[^\s\w]/g;
const LINES = /[^\n]*\n|[^\n]+/g;

const swap = (pieces: string[], at: number, random: Random): void => {
  const other = Math.floor(random() * pieces.length);
  [pieces[at], pieces[other]] = [pieces[other]!, pieces[at]!];
};
const remove = (pieces: string[], at: number): void => void pieces.splice(at, 1);
const double = (pieces: string[], at: number): void => void pieces.splice(at, 0, pieces[at]!);

const MUTATIONS: readonly Mutation[] = [
  (text, random) => splice(text, Math.floor(random() * text.length), 1, pick(CHARACTERS, random)),
  (text, random) => splice(text, Math.floor(random() * text.length), 0, pick(CHARACTERS, random)),
  (text, random) => splice(text, Math.floor(random() * text.length), Math.ceil(random() * 9), ""),
  (text, random) => text.slice(0, Math.floor(random() * text.length)),
  onPieces(TOKENS, remove),
  onPieces(TOKENS, double),
  onPieces(TOKENS, swap),
  onPieces(TOKENS, (pieces, at, random) => (pieces[at] = ` ${pick(WORDS, random)} `)),
  onPieces(LINES, remove),
  onPieces(LINES, double),
  onPieces(LINES, swap),
  onPieces(LINES, (pieces, at) => (pieces[at] = pieces[at]!.trim())),
];

/** The text after one to four mutations of its characters, tokens and lines. */
export function mutate(text: string, random: Random): string {
  let mutated = text;
  const count = 1 + Math.floor(random() * 4);
  for (let i = 0; i < count; i++) mutated = pick(MUTATIONS, random)(mutated, random);
  return mutated;
}

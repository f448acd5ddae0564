import { readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import type { Source } from "../../src/language/index.js";

const EXAMPLES = fileURLToPath(new URL("../../examples", import.meta.url));

/** An example's text, and the source that reads the files it uses (each once). */
export function example(name: string): { text: string; source: Source } {
  const texts = new Map<string, string | null>();
  const source: Source = {
    file: path.posix.join(EXAMPLES.replaceAll("\\", "/"), name),
    root: EXAMPLES.replaceAll("\\", "/"),
    read: (file) => {
      if (!texts.has(file)) texts.set(file, readOrNull(file));
      return texts.get(file) ?? null;
    },
  };
  return { text: readFileSync(path.join(EXAMPLES, name), "utf8"), source };
}

function readOrNull(file: string): string | null {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return null;
  }
}

/**
 * The text with one length changed, another in each round: the first wall's first number grows by
 * 1/64 in a round, so that nothing can be kept from the round before.
 */
export function changed(text: string, round: number): string {
  const grown = text.replace(/^(let \w+ = .*)$/m, `$1 + ${(round % 64) + 1}/64`);
  return grown === text ? `${text}\n# round ${round}\n` : grown;
}

/** A wall of about this many pieces with a window in it, square sides, in millimetres. */
export function squareWall(pieces: number): string {
  const many = Math.round(Math.sqrt(pieces));
  const side = many * 10 + (many - 1) * 2;
  const window = Math.round(side / 10);
  return [
    'plan "bench"',
    "units mm",
    "tile field {\n  face 10 x 10\n  thickness 8\n}",
    `wall back {`,
    `  size ${side} x ${side}`,
    ...["left", "right", "bottom", "top"].map((name) => `  ${name} wall movement 3`),
    `  window light {\n    at ${4 * window + 1}, ${4 * window + 5}\n    size ${window} x ${window}\n    movement 3\n  }`,
    "  lay field {\n    bond stack\n    joint 2\n    across tile centred on wall\n    up full course from bottom\n  }",
    "}",
    "",
  ].join("\n");
}

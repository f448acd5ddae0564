import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import type { Source } from "../../src/language/index.js";

const FOLDER = fileURLToPath(new URL("../../examples", import.meta.url));

/** The text of an example plan. */
export function exampleText(name: string): string {
  return readFileSync(path.join(FOLDER, name), "utf8");
}

/** The names of the example plans, the stock list with them. */
export function exampleNames(): string[] {
  return readdirSync(FOLDER).filter((name) => name.endsWith(".tileplan"));
}

/** Where an example stands: the examples' folder is the root, and is read once a file. */
export function exampleSource(name: string): Source {
  const texts = new Map<string, string | null>();
  return {
    file: name,
    root: "",
    read: (file) => {
      const known = texts.get(file);
      if (known !== undefined) return known;
      const place = path.join(FOLDER, file);
      const text = existsSync(place) ? readFileSync(place, "utf8") : null;
      texts.set(file, text);
      return text;
    },
  };
}

// The sheets of the examples that are kept as pictures in examples/sheets/: of each plan the page for
// the job, those of one wall, the shopping list, and the first of its story poles.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { gaugelath } from "./examples.mjs";

/** The plans whose sheets are kept, and the wall of each. */
const KEPT = { "three-walls": "back", "niche-wall": "north", "back-wall": "back", faults: "first" };

/** What a picture names stays the same in every commit. */
const REVISION = "A";

/** The pictures' names and texts, as the built command draws them. */
export function drawSheets() {
  const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-sheets-"));
  try {
    for (const [name, wall] of Object.entries(KEPT)) {
      const only = `plan,${wall},shopping-list`;
      const out = path.join(folder, `${name}.svg`);
      const plan = `examples/${name}.tileplan`;
      gaugelath("sheet", plan, "-o", out, "--only", only, "--revision", REVISION);
    }
    return readdirSync(folder)
      .filter((file) => !/-poles-.*-\d+\.svg$/.test(file))
      .sort()
      .map((file) => ({ file, svg: readFileSync(path.join(folder, file), "utf8") }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

import assert from "node:assert/strict";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { drawSheets } from "../../.scripts/draw-sheets.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const kept = path.join(root, "examples", "sheets");
/** Where changed sheets are laid, to be looked at. */
const changed = path.join(root, "dist", "changed", "sheets");

describe("the examples' sheets", () => {
  it("are kept as the built command prints them now", () => {
    const now = drawSheets();
    const names = readdirSync(kept).sort();
    const others = now.filter(
      ({ file, svg }) => !names.includes(file) || readFileSync(path.join(kept, file), "utf8") !== svg,
    );
    mkdirSync(changed, { recursive: true });
    for (const { file, svg } of others) writeFileSync(path.join(changed, file), svg);
    assert.deepEqual(
      others.map(({ file }) => file),
      [],
      `printed otherwise now: look at ${path.relative(root, changed)}, then npm run accept`,
    );
    assert.deepEqual(
      names,
      now.map(({ file }) => file),
    );
  });
});

import assert from "node:assert/strict";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import path from "node:path";
import { COMPARED, UNFOLDED } from "../../.scripts/examples.mjs";
import { overlayOf } from "../../src/compare/index.js";
import { buildRoomScene } from "../../src/drawing/index.js";
import { drawHeadless, drawOverlayHeadless } from "../../src/drawing/headless.js";
import { type Outcome, run } from "../../src/engine.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const examples = path.join(root, "examples");
/** Where changed pictures are laid beside the old ones. */
const changed = path.join(root, "dist", "changed");

function runExample(name: string, change: readonly [string, string] = ["", ""]): Outcome {
  const file = path.join(examples, name);
  const read = (used: string): string => readFileSync(used, "utf8");
  return run(read(file).replace(...change), { file, root: examples, read });
}

/** A page that shows the picture as it was and as it is drawn now. */
function showChange(name: string, was: string, now: string): string {
  mkdirSync(changed, { recursive: true });
  writeFileSync(path.join(changed, `${name}.was.svg`), was);
  writeFileSync(path.join(changed, `${name}.now.svg`), now);
  const names = readdirSync(changed)
    .filter((file) => file.endsWith(".now.svg"))
    .map((file) => file.replace(".now.svg", ""));
  const rows = names.map(
    (each) =>
      `<h2>${each}</h2><div><img src="${each}.was.svg" alt="as it was"><img src="${each}.now.svg" alt="now"></div>`,
  );
  const style = "<style>div{display:flex;gap:1em}img{width:48%;align-self:start}</style>";
  const page = path.join(changed, "index.html");
  writeFileSync(page, `<!doctype html><meta charset="utf-8"><title>Changed</title>${style}${rows.join("")}`);
  return path.relative(root, page);
}

/** Fails where a committed picture is not the one that is drawn now. */
function checkPicture(picture: string, now: string): void {
  const was = readFileSync(path.join(examples, picture), "utf8");
  if (now === was) return;
  const page = showChange(path.basename(picture, ".svg"), was, now);
  assert.fail(`examples/${picture} is drawn otherwise now: look at ${page}, then npm run accept`);
}

describe("the examples' pictures", () => {
  const plans = readdirSync(examples).filter((name) => name.endsWith(".tileplan"));

  it("are there", () => {
    assert.ok(plans.length >= 4);
  });

  for (const name of plans) {
    const outcome = runExample(name);
    // A stock list has no walls, and so no picture.
    if (outcome.plan.walls.length === 0) continue;
    it(`show ${name} as it is drawn now`, () => {
      checkPicture(name.replace(/\.tileplan$/, ".svg"), drawHeadless(outcome.scene()));
    });
  }

  it("show the README's room unfolded as it is drawn now", () => {
    const { solved } = runExample(path.basename(UNFOLDED.plan));
    checkPicture(path.basename(UNFOLDED.picture), drawHeadless(buildRoomScene(solved)));
  });

  it("show the README's comparison as it is drawn now", () => {
    const name = path.basename(COMPARED.plan);
    const overlay = overlayOf(runExample(name), runExample(name, COMPARED.change));
    checkPicture(path.basename(COMPARED.picture), drawOverlayHeadless(overlay));
  });
});

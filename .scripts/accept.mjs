// `npm run accept`: draws the examples' pictures and sheets anew into examples/. Look at them before you
// commit.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { drawSheets } from "./draw-sheets.mjs";
import { COMPARED, examplePlans, gaugelath, solved, UNFOLDED } from "./examples.mjs";
import { ROOT, runScript } from "./steps.mjs";

if (!runScript("esbuild.config.mjs")) process.exit(1);
for (const file of examplePlans()) {
  if (solved(file).walls.length === 0) continue;
  const picture = file.replace(/\.tileplan$/, ".svg");
  gaugelath("draw", file, "-o", picture);
  console.log(picture);
}

gaugelath("draw", UNFOLDED.plan, "--room", "-o", UNFOLDED.picture);
console.log(UNFOLDED.picture);

const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-accept-"));
const after = path.join(folder, path.basename(COMPARED.plan));
writeFileSync(after, readFileSync(COMPARED.plan, "utf8").replace(...COMPARED.change));
const { out } = gaugelath("compare", COMPARED.plan, after, "--format", "svg", "-o", "-");
writeFileSync(COMPARED.picture, out);
rmSync(folder, { recursive: true });
console.log(COMPARED.picture);

const sheets = path.join(ROOT, "examples", "sheets");
rmSync(sheets, { recursive: true, force: true });
mkdirSync(sheets);
for (const { file, svg } of drawSheets()) {
  writeFileSync(path.join(sheets, file), svg);
  console.log(`examples/sheets/${file}`);
}

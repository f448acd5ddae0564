// `npm run demo`: builds the command line, then checks and draws the examples with it.
import { mkdirSync } from "node:fs";
import path from "node:path";
import { examplePlans, gaugelath, solved } from "./examples.mjs";
import { ROOT, runScript } from "./steps.mjs";

const PICTURES = "dist/pictures";

if (!runScript("esbuild.config.mjs")) process.exit(1);
mkdirSync(path.join(ROOT, PICTURES), { recursive: true });

const drawn = [];
for (const file of examplePlans()) {
  const { walls, diagnostics } = solved(file);
  console.log(`== ${file}`);
  const [reading] = gaugelath("solve", file).out.split("\nBefore you cut");
  console.log(reading.trim());
  console.log(`\n  findings: ${findingsText(diagnostics)}\n`);
  // A stock list has no walls, and so no picture.
  if (walls.length === 0) continue;
  const picture = `${PICTURES}/${path.basename(file, ".tileplan")}.svg`;
  gaugelath("draw", file, "-o", picture);
  drawn.push(picture);
}

console.log(
  "What is wrong with a plan, as `gaugelath check` tells it (the plan with faults on purpose):\n",
);
console.log(gaugelath("check", "examples/faults.tileplan").out);
console.log("Pictures, for any browser:");
for (const picture of drawn) console.log(`  ${path.join(ROOT, picture)}`);

/** `2 errors (cut/sliver, joint/too-narrow), 1 warning (cut/taper)`. */
function findingsText(diagnostics) {
  const told = diagnostics.filter((found) => found.allowed === undefined);
  const parts = ["error", "warning", "information"].map((severity) => {
    const codes = told.filter((found) => found.severity === severity).map((found) => found.code);
    const noun = severity === "information" ? "note" : severity;
    if (codes.length === 0) return `no ${noun}s`;
    return `${codes.length} ${noun}${codes.length === 1 ? "" : "s"} (${[...new Set(codes)].join(", ")})`;
  });
  const allowed = diagnostics.length - told.length;
  return parts.join(", ") + (allowed > 0 ? `, ${allowed} allowed` : "");
}

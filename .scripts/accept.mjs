// `npm run accept`: draws the examples' pictures anew into examples/. Look at them before you commit.
import { examplePlans, gaugelath, solved } from "./examples.mjs";
import { runScript } from "./steps.mjs";

if (!runScript("esbuild.config.mjs")) process.exit(1);
for (const file of examplePlans()) {
  if (solved(file).walls.length === 0) continue;
  const picture = file.replace(/\.tileplan$/, ".svg");
  gaugelath("draw", file, "-o", picture);
  console.log(picture);
}

// Lists the files of src/ that have no test of the same name in test/, and fails on one. The
// extension's are suites of test/editor/, in the editor itself. A folder's face (index.ts) and a file
// that holds types alone (nothing is left of it once they are stripped) need none.
import { transformSync } from "esbuild";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { ROOT } from "./steps.mjs";

const files = readdirSync(path.join(ROOT, "src"), { recursive: true })
  .map((file) => file.split(path.sep).join("/"))
  .filter((file) => file.endsWith(".ts"))
  .sort();

const suites = new Set(
  readdirSync(path.join(ROOT, "test", "editor"), { recursive: true })
    .filter((file) => file.endsWith(".suite.ts"))
    .map((file) => path.basename(file, ".suite.ts")),
);

const untested = files.filter((file) => {
  if (path.basename(file) === "index.ts") return false;
  if (existsSync(path.join(ROOT, "test", file.replace(/\.ts$/, ".test.ts")))) return false;
  if (file.startsWith("extension/") && suites.has(path.basename(file, ".ts"))) return false;
  const { code } = transformSync(readFileSync(path.join(ROOT, "src", file), "utf8"), {
    loader: "ts",
    minifySyntax: true,
  });
  return code.trim() !== "";
});

for (const file of untested)
  console.error(`src/${file} has no test/${file.replace(/\.ts$/, ".test.ts")}`);
process.exitCode = untested.length > 0 ? 1 : 0;

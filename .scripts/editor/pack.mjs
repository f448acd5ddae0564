// Packs the extension: dist/gaugelath.vsix, or into a given folder.
import { createVSIX } from "@vscode/vsce";
import { statSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { ROOT } from "../steps.mjs";

/** Makes the VSIX of what is built; everything it needs is in the bundles. Returns its path. */
export async function packExtension(folder) {
  const packagePath = path.join(folder, "gaugelath.vsix");
  await createVSIX({ cwd: ROOT, packagePath, dependencies: false });
  return packagePath;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const file = await packExtension(path.join(ROOT, "dist"));
  console.log(`${path.relative(ROOT, file)}: ${Math.ceil(statSync(file).size / 1000)} kB`);
}

// Which packages' code a bundle holds, as esbuild tells it (its metafile); kept beside the bundles in
// dist/bundled/, for the notices of what is packed.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { ROOT } from "./steps.mjs";

const RECORDS = path.join(ROOT, "dist", "bundled");
const MODULES = "node_modules/";

/** The folders of the packages of which something is in these bundles, in the order of the alphabet; a file that is left out whole doesn't count. */
export function packagesIn({ outputs }) {
  const files = Object.values(outputs).flatMap(({ inputs }) =>
    Object.keys(inputs).filter((file) => inputs[file].bytesInOutput > 0),
  );
  return [...new Set(files.flatMap((file) => folderOf(file) ?? []))].sort();
}

/** Notes what is in a bundle of dist/. */
export function recordPackages(bundle, metafile) {
  mkdirSync(RECORDS, { recursive: true });
  writeFileSync(recordOf(bundle), JSON.stringify(packagesIn(metafile)));
}

/** The folders of the packages in a bundle of dist/, as it was last built. */
export function recordedPackages(bundle) {
  return JSON.parse(readFileSync(recordOf(bundle), "utf8"));
}

function recordOf(bundle) {
  return path.join(RECORDS, `${path.basename(bundle)}.json`);
}

/** `node_modules/@svgdotjs/svg.js` of a file in it; null of what is no package's: our own, or a stand-in. */
function folderOf(file) {
  const at = file.lastIndexOf(MODULES);
  if (at < 0 || /^[\w-]+:/.test(file)) return null;
  const [first, second] = file.slice(at + MODULES.length).split("/");
  const name = first.startsWith("@") ? `${first}/${second}` : first;
  return file.slice(0, at) + MODULES + name;
}

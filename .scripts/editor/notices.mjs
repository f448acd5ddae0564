// The licences of the packages that the bundles are made of.
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { ROOT } from "../steps.mjs";

/** A text with the licence of each package that the product depends on, itself or through another. */
export function noticesText() {
  const lock = JSON.parse(readFileSync(path.join(ROOT, "package-lock.json"), "utf8"));
  const folders = Object.keys(lock.packages).filter(
    (folder) => folder !== "" && !lock.packages[folder].dev && !lock.packages[folder].optional,
  );
  const notices = folders.map((folder) => {
    const { version, license } = lock.packages[folder];
    const name = folder.slice(folder.lastIndexOf("node_modules/") + "node_modules/".length);
    return `${name} ${version} (${license})\n\n${licenceIn(path.join(ROOT, folder))}`;
  });
  return ["This extension contains code of these packages.\n", ...notices].join(
    `\n${"-".repeat(72)}\n`,
  );
}

/** All that a package says of its licence: one of a font may stand beside that of the package. */
function licenceIn(folder) {
  return readdirSync(folder)
    .filter((name) => /^licen[cs]e(_\w+)?(\.\w+)?$/i.test(name))
    .map((name) => readFileSync(path.join(folder, name), "utf8").trim())
    .join("\n\n");
}

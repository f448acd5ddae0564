// The licences of the packages whose code, or font, is in the package for VS Code.
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { recordedPackages } from "../bundled-packages.mjs";
import { ROOT } from "../steps.mjs";
import { FONT_PACKAGE } from "../subset-fonts.mjs";

/** What of the packed files is made of packages but by esbuild, and of which. */
const OTHERS = { "dist/fonts": [FONT_PACKAGE] };

/** A text with the licence of each package of which something is in these files of dist/, as they were last built. */
export function noticesText(files) {
  return [
    "This extension contains code of these packages.\n",
    ...packagesOf(files).map(noticeOf),
  ].join(`\n${"-".repeat(72)}\n`);
}

/** A package's name and licence; one that says nothing of its licence is an error. */
function noticeOf(folder) {
  const manifest = JSON.parse(readFileSync(path.join(ROOT, folder, "package.json"), "utf8"));
  const { name, version, license, author } = manifest;
  const text = licenceIn(path.join(ROOT, folder));
  const by = author?.name ?? author;
  if (!license || (text === "" && !by)) throw new Error(`${folder} says nothing of its licence`);
  const told = text || `The package brings no text of its licence: ${license}, by ${by}.`;
  return `${name} ${version} (${license})\n\n${told}`;
}

/** The folders of the packages that packed files are made of. */
export function packagesOf(files) {
  const folders = files.flatMap((file) =>
    file.endsWith(".js") ? recordedPackages(file) : (OTHERS[file] ?? []),
  );
  return [...new Set(folders)].sort();
}

/** All that a package says of its licence: one of a font may stand beside that of the package. */
function licenceIn(folder) {
  return readdirSync(folder)
    .filter((name) => /^licen[cs]e(_\w+)?(\.\w+)?$/i.test(name))
    .map((name) => readFileSync(path.join(folder, name), "utf8").trim())
    .join("\n\n");
}

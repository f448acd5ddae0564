// Packs the extension as dist/gaugelath.vsix. What goes in is laid out in a folder of its own first:
// bundles hold all the code, so the packages they are made of stay out, and the manifest says only
// what the editor reads.
import { createVSIX } from "@vscode/vsce";
import { Resvg } from "@resvg/resvg-js";
import { cpSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";
import { ROOT } from "../steps.mjs";
import { noticesText } from "./notices.mjs";
import { FILES } from "./packed-files.mjs";

/** What the editor has no use for in a manifest. */
const REPOSITORY_ONLY = [
  "private",
  // Not said, .js files are CommonJS: a browser's extension host takes nothing else.
  "type",
  "bin",
  "scripts",
  "dependencies",
  "devDependencies",
  "allowScripts",
];

/** The README's picture in the package: its width in pixels. */
const PICTURE_WIDTH = 720;

/** A link to a drawing of the examples in the README. */
const DRAWING = /\]\(examples\/([^)\s]+)\.svg\)/g;

/** What is larger than this has something in it that does not belong there, in bytes. */
const MOST = 1_000_000;

/** Makes the VSIX of what is built; returns it, and the folder of what is in it. */
export async function packExtension() {
  const stage = path.join(ROOT, "dist", "package");
  rmSync(stage, { recursive: true, force: true });
  for (const file of FILES) {
    mkdirSync(path.dirname(path.join(stage, file)), { recursive: true });
    cpSync(path.join(ROOT, file), path.join(stage, file), { recursive: true });
  }
  const manifest = packedManifest();
  writeFileSync(path.join(stage, "package.json"), JSON.stringify(manifest, null, 2));
  await packReadme(stage);
  writeFileSync(path.join(stage, "NOTICES.txt"), noticesText(FILES));
  const file = path.join(ROOT, "dist", "gaugelath.vsix");
  const options = {
    dependencies: false,
    // Once the manifest names a repository, links become addresses there.
    rewriteRelativeLinks: "repository" in manifest,
    allowMissingRepository: true,
  };
  await createVSIX({ cwd: stage, packagePath: file, ...options });
  const { size } = statSync(file);
  if (size > MOST) throw new Error(`The package has ${size} bytes; at most ${MOST} are wanted`);
  return { file, folder: stage };
}

function packedManifest() {
  const manifest = JSON.parse(readFileSync(path.join(ROOT, "package.json"), "utf8"));
  for (const key of REPOSITORY_ONLY) delete manifest[key];
  // The folder holds what is packed, and nothing else.
  manifest.files = ["**"];
  return manifest;
}

/** The README with its drawings as pixels, beside it: galleries of extensions show no SVG there. */
async function packReadme(stage) {
  const text = readFileSync(path.join(ROOT, "README.md"), "utf8");
  const names = [...text.matchAll(DRAWING)].map(([, name]) => name);
  for (const name of names) {
    writeFileSync(path.join(stage, pictureOf(name)), await drawPicture(name));
  }
  const packed = text.replace(DRAWING, (_whole, name) => `](${pictureOf(name)})`);
  writeFileSync(path.join(stage, "README.md"), packed);
}

function pictureOf(name) {
  return `media/${name}.png`;
}

/** A drawing has few colours: with a palette its picture takes a third of the room. */
function drawPicture(name) {
  const drawing = readFileSync(path.join(ROOT, "examples", `${name}.svg`), "utf8");
  const fitTo = { mode: "width", value: PICTURE_WIDTH };
  const drawn = new Resvg(drawing, { fitTo }).render().asPng();
  return sharp(drawn).png({ palette: true, dither: 0, effort: 10 }).toBuffer();
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { file } = await packExtension();
  console.log(`${path.relative(ROOT, file)}: ${Math.ceil(statSync(file).size / 1000)} kB`);
}

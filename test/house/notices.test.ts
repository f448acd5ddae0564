import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { packagesIn } from "../../.scripts/bundled-packages.mjs";
import { noticesText, packagesOf } from "../../.scripts/editor/notices.mjs";
import { FILES } from "../../.scripts/editor/packed-files.mjs";

/** One bundle of these files, by how many bytes of each are in it. */
function bundleOf(files: Readonly<Record<string, number>>) {
  const inputs: Record<string, { bytesInOutput: number }> = {};
  for (const [file, bytesInOutput] of Object.entries(files)) inputs[file] = { bytesInOutput };
  const output = { bytes: 0, imports: [], exports: [], inputs };
  return { outputs: { "dist/one.js": output } };
}

describe("the packages in a bundle", () => {
  it("are those of its files, nested and scoped ones too, each once", () => {
    const found = packagesIn(
      bundleOf({
        "src/main.ts": 10,
        "node_modules/pdfkit/js/pdfkit.es.js": 10,
        "node_modules/pdfkit/js/other.js": 10,
        "node_modules/@svgdotjs/svg.js/src/main.js": 10,
        "node_modules/linebreak/node_modules/base64-js/index.js": 10,
      }),
    );
    assert.deepEqual(found, [
      "node_modules/@svgdotjs/svg.js",
      "node_modules/linebreak/node_modules/base64-js",
      "node_modules/pdfkit",
    ]);
  });

  it("are not those of which nothing is left, nor what stands in for one", () => {
    const files = { "node_modules/debug/src/index.js": 0, "stand-in:node_modules/sax": 10 };
    assert.deepEqual(packagesIn(bundleOf(files)), []);
  });
});

// The build must stand in dist/.
describe("the notices in the package for VS Code", () => {
  const packages = packagesOf(FILES);
  const notices = noticesText(FILES)
    .split(`\n${"-".repeat(72)}\n`)
    .slice(1);

  it("are one for each package, with its version and the text of its licence", () => {
    assert.equal(notices.length, packages.length);
    packages.forEach((folder, i) => {
      const { name, version } = JSON.parse(
        readFileSync(new URL(`../../${folder}/package.json`, import.meta.url), "utf8"),
      ) as { name: string; version: string };
      assert.ok(notices[i]!.startsWith(`${name} ${version} (`), notices[i]!.slice(0, 80));
      assert.match(notices[i]!, /permi|licen[cs]e/i);
    });
  });

  it("name what each bundle is made of, and the font", () => {
    const named = ["chevrotain", "pdfkit", "flatbush", "vscode-languageclient", "@svgdotjs/svg.js"];
    for (const name of [...named, "@expo-google-fonts/open-sans"]) {
      assert.ok(packages.includes(`node_modules/${name}`), name);
    }
    const font = notices[packages.indexOf("node_modules/@expo-google-fonts/open-sans")]!;
    assert.match(font, /SIL OPEN FONT LICENSE/i);
  });

  it("don't name what the product depends on but stand-ins take the place of, or types alone", () => {
    // .scripts/bundle-print.mjs, bundle-extension.mjs and lean-grammar.mjs say what stands in for what.
    for (const name of [
      "minimatch",
      "lodash-es",
      "linebreak",
      "sax",
      "png-js",
      "image-size",
      "@types/mdast",
    ]) {
      assert.ok(!packages.includes(`node_modules/${name}`), name);
    }
  });

  it("are of each packed bundle by itself", () => {
    assert.ok(packagesOf(["dist/print.js"]).includes("node_modules/pdfkit"));
    assert.ok(!packagesOf(["dist/preview.js"]).includes("node_modules/pdfkit"));
    assert.deepEqual(packagesOf(["LICENSE", "media/icon.png"]), []);
  });
});

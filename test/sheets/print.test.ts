import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { createContext, runInContext } from "node:vm";
import { build } from "esbuild";
import * as print from "../../src/sheets/print.js";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The packages that a face brings along. */
async function packagesOf(face: string): Promise<string[]> {
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [face],
    bundle: true,
    write: false,
    metafile: true,
    platform: "node",
    format: "esm",
    logLevel: "silent",
  });
  const names = Object.keys(metafile.inputs).map(
    (file) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[1],
  );
  return [...new Set(names.filter((name) => name !== undefined))];
}

describe("the face for programs that print", () => {
  it("is apart: who reads and writes data alone loads no font and no writer of files", async () => {
    const plain = await packagesOf("src/sheets/index.ts");
    for (const name of ["pdfkit", "fontkit", "svgdom", "@tarikjabiri/dxf", "csv-stringify"]) {
      assert.ok(!plain.includes(name), name);
    }
    const printing = await packagesOf("src/sheets/print.ts");
    assert.ok(printing.includes("pdfkit") && printing.includes("@tarikjabiri/dxf"));
  });

  it("is what the built print.js offers, which needs neither Node's modules nor a page", () => {
    const text = readFileSync(`${root}/dist/print.js`, "utf8");
    const worker = createContext({
      TextEncoder,
      TextDecoder,
      URL,
      setTimeout,
      queueMicrotask,
      atob,
      btoa,
    });
    const offered = runInContext(`${text};gaugelathPrint`, worker) as object;
    assert.deepEqual(Object.keys(offered).sort(), Object.keys(print).sort());
  });
});

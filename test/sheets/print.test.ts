import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { createContext, runInContext } from "node:vm";
import { build } from "esbuild";
import * as print from "../../src/sheets/print.js";
import { exampleNames } from "../support/examples.js";
import { sheetWork } from "./print/kit.js";

type Print = typeof print;

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

  /** What a worker has: neither Node's modules nor a page. */
  function printInWorker(): Print {
    const text = readFileSync(`${root}/dist/print.js`, "utf8");
    const timers = { setTimeout, queueMicrotask };
    const worker = createContext({ TextEncoder, TextDecoder, URL, atob, btoa, ...timers });
    return runInContext(`${text};gaugelathPrint`, worker) as Print;
  }

  it("is what the built print.js offers, which needs neither Node's modules nor a page", () => {
    assert.deepEqual(Object.keys(printInWorker()).sort(), Object.keys(print).sort());
  });

  // The bundle is without those parts of its packages that no sheet asks for.
  const built = createRequire(import.meta.url)(`${root}/dist/print.js`) as Print;
  for (const example of exampleNames()) {
    it(`prints ${example} from the built print.js byte for byte as from its source`, async () => {
      const work = sheetWork({}, example);
      for (const format of ["pdf", "dxf", "csv", "svg", "md"] as const) {
        const printed = (by: Print) => partsOf(new by.SheetPress(work), format);
        assert.deepEqual(await printed(built), await printed(print), format);
      }
    });
  }

  it("writes the same texts in a worker", async () => {
    const work = sheetWork();
    const worker = printInWorker();
    for (const format of ["dxf", "csv", "svg", "md"] as const) {
      const written = (by: Print) => partsOf(new by.SheetPress(work), format);
      assert.deepEqual(await written(worker), await written(print), format);
    }
  });
});

/** The files of a format, by their part's name. */
async function partsOf(
  press: print.SheetPress,
  format: print.SheetFormat,
): Promise<Record<string, string>> {
  const parts = await press.partsOf(format);
  const text = (chunk: string | Uint8Array) =>
    typeof chunk === "string" ? chunk : Buffer.from(chunk).toString("latin1");
  return Object.fromEntries(
    parts.map(({ part, content }) => [part, Array.from(content, text).join("")]),
  );
}

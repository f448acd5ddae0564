import assert from "node:assert/strict";
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import { type Paper, paperOf } from "../../../src/sheets/index.js";
import { layOut } from "../../../src/sheets/print/lay-out.js";
import { pdfOf } from "../../../src/sheets/print/pdf.js";
import { takeoff } from "../../../src/takeoff/index.js";
import { exampleOutcome, exampleScene, FACES, paperWith, tableOf, wordsOf } from "./kit.js";

/** A PDF as another program reads it. */
async function read(bytes: Uint8Array) {
  const file = await getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false })
    .promise;
  const pages = [];
  for (let i = 1; i <= file.numPages; i++) {
    const page = await file.getPage(i);
    const { items } = await page.getTextContent();
    const words = items.flatMap((item) =>
      "str" in item && item.str.trim() !== "" ? [item.str] : [],
    );
    const { fnArray } = await page.getOperatorList();
    pages.push({ words, view: page.view, operators: fnArray });
  }
  return { pages, metadata: await file.getMetadata(), outline: await file.getOutline() };
}

async function printed(paper: Paper, size: "letter" | "a4" = "letter") {
  const laid = layOut(paper, size, FACES);
  return { laid, bytes: await pdfOf(laid, FACES) };
}

describe("a PDF", () => {
  it("has the words of every sheet, to be searched and copied, each once", async () => {
    const { solved, diagnostics } = exampleOutcome("three-walls.tileplan");
    const paper = paperOf(solved, diagnostics, takeoff(solved), { revision: "abc1234" });
    const { laid, bytes } = await printed(paper);
    const { pages } = await read(bytes);
    assert.equal(pages.length, laid.sheets.length);
    const flat = (words: readonly string[]): string => words.join("").replace(/\s/g, "");
    laid.sheets.forEach((sheet, i) => {
      const pictured = sheet.marks.flatMap((mark) =>
        mark.kind === "picture"
          ? [...mark.scene.walls.flatMap(({ labels }) => labels), ...mark.scene.labels]
          : [],
      );
      const found = flat(pages[i]!.words);
      for (const { text } of pictured) assert.ok(found.includes(flat([text])), text);
      const letters = flat([...wordsOf(sheet), ...pictured.map(({ text }) => text)]).length;
      const badges = sheet.marks.flatMap((mark) =>
        mark.kind === "picture"
          ? [...mark.scene.badges, ...mark.scene.walls.flatMap((w) => w.badges)]
          : [],
      );
      assert.equal(found.length, letters + flat(badges.map(({ number }) => number)).length);
      for (const word of wordsOf(sheet)) assert.ok(found.includes(flat([word])), word);
    });
  });

  it("is the same, byte by byte, for the same paper", async () => {
    const paper = paperWith(tableOf(60), {
      kind: "picture",
      scene: exampleScene("niche-wall.tileplan"),
      caption: "North wall",
    });
    const [one, two] = [await printed(paper), await printed(paper)];
    assert.deepEqual(Buffer.from(one.bytes), Buffer.from(two.bytes));
    const other = await printed({ ...paper, title: "Other" });
    assert.notDeepEqual(Buffer.from(one.bytes), Buffer.from(other.bytes));
  });

  it("embeds its fonts, and only those letters that are used", async () => {
    const { bytes } = await printed(paperWith({ kind: "text", text: "Ledger" }));
    const text = Buffer.from(bytes).toString("latin1");
    assert.equal(text.match(/\/FontFile2/g)!.length, 2);
    assert.match(text, /[A-Z]{6}\+OpenSans/);
    assert.ok(bytes.length < 40_000, `${bytes.length} bytes`);
  });

  it("says what it is, and nothing of the hour", async () => {
    const { bytes } = await printed({ ...paperWith(tableOf(1)), title: "Tom & <Jerry> Löwe" });
    const { metadata, outline } = await read(bytes);
    const info = metadata.info as Record<string, unknown>;
    assert.equal(info.Title, "Tom & <Jerry> Löwe");
    assert.equal(info.Keywords, "revision 7");
    assert.equal(info.Creator, "Gaugelath");
    assert.equal(info.CreationDate, undefined);
    assert.deepEqual(
      outline.map(({ title }) => title),
      ["Back wall"],
    );
  });

  it("has the paper's size", async () => {
    for (const [size, width, height] of [
      ["letter", 612, 792],
      ["a4", 595.276, 841.89],
    ] as const) {
      const { bytes } = await printed(paperWith(tableOf(1)), size);
      const [page] = (await read(bytes)).pages;
      assert.deepEqual(
        page!.view.map((each) => Math.round(each * 1000) / 1000),
        [0, 0, width, height],
      );
    }
  });

  it("is made of lines and letters alone, in black and grey", async () => {
    const { bytes } = await printed(
      paperWith({ kind: "picture", scene: exampleScene("three-walls.tileplan", 1), caption: "" }),
    );
    const [page] = (await read(bytes)).pages;
    const pixels = [OPS.paintImageXObject, OPS.paintInlineImageXObject, OPS.paintImageMaskXObject];
    assert.ok(!page!.operators.some((operator) => pixels.includes(operator)));
  });

  it("tells how far it is", async () => {
    const laid = layOut(paperWith(tableOf(120)), "letter", FACES);
    const told: number[] = [];
    await pdfOf(laid, FACES, (done) => told.push(done));
    assert.deepEqual(
      told,
      laid.sheets.map((_, i) => i + 1),
    );
  });
});

import assert from "node:assert/strict";
import { SheetPress, type SheetWork } from "../../../src/sheets/print/sheet-press.js";
import { sheetWork } from "./kit.js";

describe("the parts of a sheet", () => {
  const whole = sheetWork();

  it("are one file for PDF, Markdown and JSON", async () => {
    const press = new SheetPress(whole);
    for (const format of ["pdf", "md", "json"] as const) {
      assert.deepEqual(
        (await press.partsOf(format)).map(({ part }) => part),
        [""],
      );
    }
  });

  it("are a drawing for each wall and for each surface inside its openings as DXF", async () => {
    const work = sheetWork({}, "niche-inside.tileplan");
    const parts = await new SheetPress(work).partsOf("dxf");
    assert.deepEqual(
      parts.map(({ part }) => part),
      [
        "wall-back",
        ...["back", "left", "right", "sill", "head"].map((face) => `wall-back-shelf-${face}`),
      ],
    );
    const drawn = parts.map(({ content }) => Array.from(content).join(""));
    assert.equal(new Set(drawn).size, parts.length, "each its own");
    assert.ok(drawn.every((text) => text.includes("LWPOLYLINE")));
  });

  it("are named by page and sheet for SVG", async () => {
    const names = (await new SheetPress(whole).partsOf("svg")).map(({ part }) => part);
    assert.equal(new Set(names).size, names.length);
    for (const { id } of whole.paper.pages) assert.ok(names.includes(id), id);
    assert.ok(names.includes("wall-back-2"));
  });

  it("are without the sheets of story poles where they aren't wanted", async () => {
    const press = new SheetPress(whole);
    const names = async (poles: boolean): Promise<string[]> =>
      (await press.partsOf("svg", { poles })).map(({ part }) => part);
    const all = await names(true);
    assert.ok(all.some((name) => name.startsWith("poles-")));
    assert.deepEqual(
      await names(false),
      all.filter((name) => !name.startsWith("poles-")),
    );
    assert.deepEqual(
      (await press.partsOf("png", { poles: false })).map(({ part }) => part),
      await names(false),
    );
  });

  it("are drawn by the host's rasteriser for PNG, under the same names", async () => {
    const press = new SheetPress(whole);
    const pngs = await press.partsOf("png");
    assert.deepEqual(
      pngs.map(({ part }) => part),
      (await press.partsOf("svg")).map(({ part }) => part),
    );
    for (const { content } of pngs) assert.equal(Buffer.from([...content][0]!).toString(), "<svg");
  });

  it("are a drawing for each wall that has a page", async () => {
    const parts = async (given: SheetWork): Promise<string[]> =>
      (await new SheetPress(given).partsOf("dxf")).map(({ part }) => part);
    assert.deepEqual(await parts(whole), ["wall-left", "wall-back", "wall-plumbing"]);
    const pages = whole.paper.pages.filter(({ wall }) => wall === "back");
    assert.deepEqual(await parts(sheetWork({ paper: { ...whole.paper, pages } })), ["wall-back"]);
  });

  it("are the lists that are wanted", async () => {
    const press = new SheetPress(sheetWork({ lists: ["purchases"] }));
    assert.deepEqual(
      (await press.partsOf("csv")).map(({ part }) => part),
      ["purchases"],
    );
  });

  it("have a picture for each wall", () => {
    const pictures = new SheetPress(whole).pictures();
    assert.deepEqual(
      pictures.map(({ part }) => part),
      ["wall-left", "wall-back", "wall-plumbing"],
    );
    for (const { content } of pictures) assert.match([...content].join(""), /^<svg /);
  });

  it("tell how many sheets are printed", async () => {
    const told: [number, number][] = [];
    await new SheetPress(sheetWork({ progress: (done, all) => told.push([done, all]) })).partsOf(
      "pdf",
    );
    assert.deepEqual(told.at(-1), [told.length, told.length]);
  });
});

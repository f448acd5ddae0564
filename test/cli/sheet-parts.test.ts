import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { SheetPress, type SheetWork } from "../../src/cli/sheet-parts.js";
import { run } from "../../src/engine.js";
import { paperOf } from "../../src/sheets/index.js";
import { takeoff } from "../../src/takeoff/index.js";
import { exampleSource, exampleText } from "../support/examples.js";

const assets = fileURLToPath(new URL("../../dist", import.meta.url));

function work(given: Partial<SheetWork> = {}): SheetWork {
  const name = "three-walls.tileplan";
  const { solved, diagnostics } = run(exampleText(name), exampleSource(name));
  const taken = takeoff(solved);
  return {
    facts: { solved, diagnostics, takeoff: taken, revision: null, shownPath: (file) => file },
    paper: paperOf(solved, diagnostics, taken, { revision: null }),
    size: "letter",
    lists: ["cuts", "purchases"],
    assets,
    progress: () => undefined,
    ...given,
  };
}

describe("the parts of a sheet", () => {
  const whole = work();

  it("are one file for PDF, Markdown and JSON", async () => {
    const press = new SheetPress(whole);
    for (const format of ["pdf", "md", "json"] as const) {
      assert.deepEqual(
        (await press.partsOf(format)).map(({ part }) => part),
        [""],
      );
    }
  });

  it("are named by page and sheet for SVG", async () => {
    const names = (await new SheetPress(whole).partsOf("svg")).map(({ part }) => part);
    assert.equal(new Set(names).size, names.length);
    for (const { id } of whole.paper.pages) assert.ok(names.includes(id), id);
    assert.ok(names.includes("wall-back-2"));
  });

  it("are a drawing for each wall that has a page", async () => {
    const parts = async (given: SheetWork): Promise<string[]> =>
      (await new SheetPress(given).partsOf("dxf")).map(({ part }) => part);
    assert.deepEqual(await parts(whole), ["wall-left", "wall-back", "wall-plumbing"]);
    const pages = whole.paper.pages.filter(({ wall }) => wall === "back");
    assert.deepEqual(await parts(work({ paper: { ...whole.paper, pages } })), ["wall-back"]);
  });

  it("are the lists that are wanted", async () => {
    const press = new SheetPress(work({ lists: ["purchases"] }));
    assert.deepEqual(
      (await press.partsOf("csv")).map(({ part }) => part),
      ["purchases"],
    );
  });

  it("have a picture for each wall", async () => {
    const pictures = await new SheetPress(whole).pictures();
    assert.deepEqual(
      pictures.map(({ part }) => part),
      ["wall-left", "wall-back", "wall-plumbing"],
    );
    for (const { content } of pictures) assert.match([...content].join(""), /^<svg /);
  });

  it("tell how many sheets are printed", async () => {
    const told: [number, number][] = [];
    await new SheetPress(work({ progress: (done, all) => told.push([done, all]) })).partsOf("pdf");
    assert.deepEqual(told.at(-1), [told.length, told.length]);
  });
});

import assert from "node:assert/strict";
import type { Completion } from "../../src/service/index.js";
import { edited, FILE, Plans, withCursor } from "./plans.js";

function completionsAt(marked: string, texts: Readonly<Record<string, string>> = {}): Completion[] {
  const { text, at } = withCursor(marked);
  const plans = new Plans(texts);
  return plans.service.completions(plans.open(text), at);
}

function labelsAt(marked: string): string[] {
  return completionsAt(marked).map(({ label }) => label);
}

/** The text after a completion is taken. */
function taken(marked: string, label: string): string {
  const { text } = withCursor(marked);
  const completion = completionsAt(marked).find((each) => each.label === label);
  assert.ok(completion, `${label} among ${labelsAt(marked).join(", ")}`);
  return edited(text, [completion]);
}

const STOCK = 'use "stock.tileplan"\n';

describe("completion", () => {
  it("offers what follows the tile of a surface inside an opening", () => {
    const niche = (line: string) =>
      `tile a {\n  face 1 x 2\n}\nwall w {\n  niche n {\n    ${line}\n  }\n}\n`;
    assert.deepEqual(labelsAt(niche("back |")), ["a"]);
    assert.deepEqual(labelsAt(niche("back a |")), ["stack", "running", "joint", "across", "up"]);
    assert.deepEqual(labelsAt(niche("back a stack |")), ["joint", "across", "up"]);
    assert.deepEqual(labelsAt(niche("back a across tile centred on |")), ["wall", "n"]);
    assert.deepEqual(labelsAt(niche("sides a across tile centred on |")), ["n"]);
    assert.deepEqual(labelsAt(niche("sill a up full course from |")), [
      "bottom",
      "top",
      "front",
      "back",
    ]);
  });

  it("offers the statements of the block, those that may stand once only once", () => {
    assert.ok(labelsAt("|").includes("wall"));
    assert.deepEqual(labelsAt("tile a {\n  face 1 x 2\n  |\n}\n"), [
      "thickness",
      "variation",
      "warpage",
      "edges",
      "box",
      "directional",
      "lot",
      "price",
      "breakage",
      "spares",
      "allow",
    ]);
    const inWall = labelsAt("wall a {\n  left wall\n  |\n}\n");
    assert.ok(inWall.includes("right") && inWall.includes("window") && !inWall.includes("left"));
    assert.deepEqual(labelsAt("wall a {\n  lay b {\n    bo|\n  }\n}\n"), [
      "bond",
      "joint",
      "across",
      "up",
      "covers",
      "at",
      "size",
      "over",
      "under",
      "courses",
      "between",
      "set",
      "movement",
      "allow",
    ]);
  });

  it("has a line of help with each", () => {
    for (const text of [
      "|",
      "wall a {\n  |\n}\n",
      "wall a {\n  left |\n}\n",
      "rules { | }",
      "mortar {\n  |\n}\n",
    ]) {
      for (const { label, help } of completionsAt(text)) assert.ok(help.length > 5, label);
    }
  });

  it("offers the units of stock, behind a number and in it", () => {
    const inBlock = (block: string, line: string): string[] =>
      labelsAt(`${block} {\n  ${line}\n}\n`);
    assert.deepEqual(inBlock("grout", "bag 25 |"), ["lb", "oz", "kg", "g"]);
    assert.deepEqual(inBlock("grout", "bag 25|"), ["lb", "oz", "kg", "g"]);
    assert.deepEqual(inBlock("mortar", "bag 50 lb |"), ["covers"]);
    assert.deepEqual(inBlock("mortar", "bag 50 lb covers 40 |"), ["sqft", "m2"]);
    assert.deepEqual(inBlock("sealant", "tube 10.1|"), ["floz", "ml", "l"]);
    assert.deepEqual(inBlock("sealant", "depth 1|"), ["in", "ft", "mm", "cm", "m"]);
    assert.equal(
      taken("sealant {\n  tube 10.1 |\n}\n", "floz"),
      "sealant {\n  tube 10.1 floz\n}\n",
    );
    for (const line of ["price 9|", "density 1|"]) assert.deepEqual(inBlock("grout", line), []);
  });

  it("offers what a price is for in each block", () => {
    assert.deepEqual(labelsAt("tile a {\n  price 42.50 a |\n}\n"), ["box", "piece"]);
    assert.deepEqual(labelsAt("trim a {\n  price 3 a |\n}\n"), ["piece"]);
    assert.deepEqual(labelsAt("grout {\n  price 3 a |\n}\n"), ["bag"]);
    assert.deepEqual(labelsAt("sealant {\n  price 3 |\n}\n"), ["a"]);
    // A price is no length, so that no length's name may stand there.
    assert.deepEqual(labelsAt("let a = 1\nsealant {\n  price |\n}\n"), []);
  });

  it("offers what an edge may meet, and its clauses", () => {
    const kinds = [
      "pan",
      "tub",
      "floor",
      "ceiling",
      "counter",
      "wall",
      "corner",
      "outside",
      "free",
    ];
    assert.deepEqual(labelsAt("wall a {\n  left |\n}\n"), kinds);
    assert.deepEqual(labelsAt("wall a {\n  left pan |\n}\n"), ["measured", "movement", "joint"]);
    assert.deepEqual(labelsAt("wall a {\n  left corner b |\n}\n"), ["under", "over"]);
    assert.deepEqual(labelsAt("wall a {\n  left outside b |\n}\n"), ["under", "mitre", "over"]);
  });

  it("offers wishes, and how they go on", () => {
    assert.ok(labelsAt("prefer {\n  |\n}\n").includes("bond"));
    assert.deepEqual(labelsAt("prefer {\n  bond |\n}\n"), ["goes"]);
    assert.deepEqual(labelsAt("prefer {\n  bond goes |\n}\n"), ["on"]);
  });

  it("offers names of the right kind, those of used files too", () => {
    assert.deepEqual(labelsAt(`${STOCK}wall a {\n  lay |\n}\n`), ["pressed"]);
    assert.deepEqual(labelsAt(`${STOCK}wall a {\n  left free trim |\n}\n`), ["nose"]);
    assert.deepEqual(labelsAt("wall a {\n  left corner |\n}\nwall b {\n}\n"), ["b"]);
    assert.deepEqual(labelsAt("wall a {\n  left outside |\n}\nwall b {\n}\n"), ["b"]);
    assert.deepEqual(
      labelsAt("wall a {\n  lay t {\n    across mirrored from |\n  }\n}\nwall b {\n}\n"),
      ["b"],
    );
    assert.deepEqual(labelsAt(`${STOCK}wall a {\n  left outside b over trim |\n}\n`), ["nose"]);
    assert.deepEqual(labelsAt("let sill = 3\nlet head = |\n"), ["sill"]);
    const walls =
      "wall a {\n  window sash {\n  }\n  lay t {\n    across tile centred on |\n  }\n}\n";
    assert.deepEqual(labelsAt(`${walls}wall b {\n  window other {\n  }\n}\n`), ["wall", "sash"]);
    assert.deepEqual(labelsAt(walls.replace("across tile centred on", "up full course under")), [
      "sash",
    ]);
  });

  it("offers bonds, frames' joins and starts", () => {
    const lay = (line: string): string => `wall a {\n  lay t {\n    ${line}\n  }\n}\n`;
    assert.deepEqual(labelsAt(lay("bond |")), ["stack", "running"]);
    assert.deepEqual(labelsAt(lay("across |")), ["full", "tile", "joint", "wrapped", "mirrored"]);
    assert.deepEqual(labelsAt(lay("across wrapped from b |")), ["added", "swallowed"]);
    assert.deepEqual(labelsAt(lay("up full course |")), ["from", "under", "over"]);
    assert.deepEqual(labelsAt("wall a {\n  window b {\n    frame nose |\n  }\n}\n"), [
      "mitre",
      "butt",
    ]);
  });

  it("offers units behind a number", () => {
    assert.deepEqual(labelsAt("bed 300|\n").sort(), ["cm", "ft", "in", "m", "mm"]);
    assert.equal(taken("bed 300m|\n", "mm"), "bed 300mm\n");
    assert.deepEqual(labelsAt("units |\n"), ["inch", "mm", "cm", "m", "foot"]);
  });

  it("offers the rules' codes with their titles, and limits", () => {
    const codes = completionsAt("allow |\n");
    const sliver = codes.find(({ label }) => label === "cut/sliver");
    assert.match(sliver!.help, /third of its tile/);
    assert.equal(taken("allow cut/sl|\n", "cut/sliver"), "allow cut/sliver\n");
    assert.ok(labelsAt("rules { sliver 1, | }\n").includes("half"));
    assert.deepEqual(labelsAt("rules { half | }\n").slice(0, 2), ["off", "on"]);
  });

  it("replaces the word that was begun", () => {
    assert.equal(taken("wall a {\n  lef|\n}\n", "left"), "wall a {\n  left\n}\n");
  });

  it("offers paths of other plans inside a use", () => {
    const texts = { "/plans/rooms/a.tileplan": "", "/other/b.tileplan": "" };
    const labels = completionsAt('use "|"\n', texts).map(({ label }) => label);
    assert.deepEqual(labels, ["rooms/a.tileplan", "stock.tileplan"]);
    assert.ok(!labels.includes(FILE));
  });

  it("offers nothing in a comment, in a title, or where a new name is given", () => {
    assert.deepEqual(labelsAt("bed 1 # |\n"), []);
    assert.deepEqual(labelsAt('plan "|"\n'), []);
    assert.deepEqual(labelsAt("wall |\n"), []);
  });

  it("knows its place in a broken text", () => {
    const broken = "wall a {\n  size 60 x\n  left corner corner\n  lay {\n    bond |\n";
    assert.deepEqual(labelsAt(broken), ["stack", "running"]);
  });
});

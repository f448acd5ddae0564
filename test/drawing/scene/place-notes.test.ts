import assert from "node:assert/strict";
import { listBlock } from "../../../src/drawing/scene/list-block.js";
import { placeNotes, type NoteForms } from "../../../src/drawing/scene/place-notes.js";

const blocks = ({ single, findings }: NoteForms) =>
  [single, findings, single].map((form, i) =>
    listBlock(`block ${i}`, ["a few words", "and a few more"], form, (words) => ({
      words,
      indent: 0,
      role: "note",
      swatches: [],
      badges: [],
    })),
  );

const headings = (room: { left: number; top: number; right: number; bottom: number }) =>
  placeNotes(room, 10, blocks).labels.filter(({ text }) => text.startsWith("block"));

describe("the notes", () => {
  it("stand in a column beside a tall wall", () => {
    const tall = headings({ left: 0, top: 0, right: 500, bottom: 900 });
    assert.ok(tall.every(({ box }) => box.left > 500));
    assert.equal(new Set(tall.map(({ x }) => x)).size, 1);
  });

  it("stand in a row below a wide one", () => {
    const wide = headings({ left: 0, top: 0, right: 2000, bottom: 500 });
    assert.ok(wide.every(({ box }) => box.top > 500));
    assert.equal(new Set(wide.map(({ y }) => y)).size, 1);
    assert.equal(new Set(wide.map(({ x }) => x)).size, 3);
  });
});

import assert from "node:assert/strict";
import { layCaution } from "../../../src/sheets/print/lay-caution.js";
import { boxOf, faultsOf, newFlow, textsOf, wordsOf } from "./kit.js";

const CAUTION = "Cutting tile makes respirable silica dust: cut wet or with extraction.";

describe("a caution", () => {
  it("stands in a ruled box with a black bar, not in a colour", () => {
    const flow = newFlow();
    layCaution(flow, [CAUTION, "Follow local code."]);
    const [sheet] = flow.finish();
    const boxes = sheet!.marks.filter((mark) => mark.kind === "box");
    const [frame, bar] = boxes;
    assert.ok(frame!.outline !== null && frame!.fill === null);
    assert.equal(bar!.fill, 0);
    const room = boxOf(frame!);
    for (const text of textsOf(sheet!).slice(2)) {
      const box = boxOf(text);
      assert.ok(box.left > room.left && box.right < room.right, text.text);
      assert.ok(box.top > room.top && box.bottom < room.bottom, text.text);
      assert.equal(text.weight, "bold");
    }
    assert.deepEqual(faultsOf(sheet!), []);
  });

  it("has a sign, a triangle with a bang, once a box", () => {
    const flow = newFlow();
    layCaution(flow, [CAUTION]);
    const [sheet] = flow.finish();
    assert.equal(wordsOf(sheet!).filter((word) => word === "!").length, 1);
  });

  it("goes on over the next sheet where it is taller than one", () => {
    const flow = newFlow();
    const cautions = Array.from({ length: 90 }, (_, i) => `${i + 1}: ${CAUTION}`);
    layCaution(flow, cautions);
    const sheets = flow.finish();
    assert.ok(sheets.length > 1);
    for (const sheet of sheets) assert.deepEqual(faultsOf(sheet), []);
    const words = sheets.flatMap((sheet) => wordsOf(sheet)).join(" ");
    for (let i = 1; i <= 90; i++) assert.ok(words.includes(`${i}: Cutting`));
  });
});

import assert from "node:assert/strict";
import { Flow } from "../../../src/sheets/print/flow.js";
import { FACES, faultsOf, newFlow, wordsOf } from "./kit.js";

describe("the flow of a page", () => {
  it("puts the title at the head of every sheet, and says where it goes on", () => {
    const flow = newFlow();
    flow.line("first", flow.left, flow.take(20), 10);
    flow.begin();
    flow.line("second", flow.left, flow.take(20), 10);
    const [one, two] = flow.finish();
    assert.deepEqual(wordsOf(one!), ["Test bench", "Back wall", "first"]);
    assert.deepEqual(wordsOf(two!), ["Test bench", "Back wall (continued)", "second"]);
    assert.deepEqual([one!.part, two!.part], [1, 2]);
  });

  it("tells the revision at the right, beside the longest title of a plan", () => {
    const head = {
      page: "a",
      title: "A",
      plan: "Long house ".repeat(30),
      revision: "abc, changed since",
    };
    const [sheet] = new Flow(head, "a4", FACES).finish();
    assert.ok(wordsOf(sheet!).includes("Revision abc, changed since"));
    assert.deepEqual(faultsOf(sheet!), []);
  });

  it("begins a sheet where something does not fit, but not when nothing stands on this one", () => {
    const flow = newFlow();
    flow.need(10_000);
    assert.ok(flow.empty);
    flow.line("first", flow.left, flow.take(20), 10);
    flow.need(flow.room + 1);
    assert.ok(flow.empty);
    assert.equal(flow.finish().length, 1, "a sheet that nothing came to is not printed");
  });

  it("leaves no white at the head of a sheet", () => {
    const flow = newFlow();
    const { y } = flow;
    flow.space(12);
    assert.equal(flow.y, y);
    flow.take(5);
    flow.space(12);
    assert.equal(flow.y, y + 17);
  });

  it("turns a sheet where it is asked", () => {
    const flow = newFlow();
    flow.line("upright", flow.left, flow.take(20), 10);
    flow.begin(false);
    flow.line("turned", flow.left, flow.take(20), 10);
    const [one, two] = flow.finish();
    assert.deepEqual([two!.width, two!.height], [one!.height, one!.width]);
  });

  it("keeps the letters that the font lacks, to be told", () => {
    const flow = newFlow();
    flow.line("日 tile", flow.left, flow.take(20), 10);
    assert.deepEqual([...flow.missing], ["日"]);
  });
});

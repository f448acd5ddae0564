import assert from "node:assert/strict";
import { layHeading, layList, layText } from "../../../src/sheets/print/lay-text.js";
import { faultsOf, newFlow, textsOf, wordsOf } from "./kit.js";

const LONG = "Set the first uncut course dry along the ledger before mortar is mixed. ".repeat(4);

describe("a text", () => {
  it("wraps within the margins, and none of it is lost", () => {
    const flow = newFlow();
    layText(flow, LONG);
    const [sheet] = flow.finish();
    assert.deepEqual(faultsOf(sheet!), []);
    assert.equal(wordsOf(sheet!).slice(2).join(" "), LONG.trim());
  });

  it("runs on over the next sheet", () => {
    const flow = newFlow();
    layText(flow, LONG.repeat(40));
    const sheets = flow.finish();
    assert.ok(sheets.length > 1);
    const words = sheets.flatMap((sheet) => wordsOf(sheet).slice(2)).join(" ");
    assert.equal(words, LONG.repeat(40).trim());
  });
});

describe("a heading", () => {
  it("is never the last thing on a sheet", () => {
    const flow = newFlow();
    flow.line("before", flow.left, flow.take(flow.room - 60), 10);
    layHeading(flow, "Courses");
    layText(flow, "They are level.");
    const [, two] = flow.finish();
    assert.deepEqual(wordsOf(two!).slice(2), ["Courses", "They are level."]);
  });
});

describe("a list", () => {
  it("numbers its items, and sets their further lines under the first", () => {
    const flow = newFlow();
    layList(flow, [LONG, "Clean up."], true);
    const [sheet] = flow.finish();
    const texts = textsOf(sheet!).slice(2);
    const at = (words: string): number => texts.find(({ text }) => text === words)!.x;
    assert.equal(at("1."), at("2."));
    const lines = texts.filter(({ text }) => !/^\d\.$/.test(text));
    assert.equal(new Set(lines.map(({ x }) => x)).size, 1);
    assert.ok(lines[0]!.x > at("1."));
    assert.deepEqual(faultsOf(sheet!), []);
  });

  it("has dots where the order doesn't matter", () => {
    const flow = newFlow();
    layList(flow, ["a", "b"], false);
    const [sheet] = flow.finish();
    assert.deepEqual(wordsOf(sheet!).slice(2), ["•", "a", "•", "b"]);
  });
});

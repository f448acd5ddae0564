import assert from "node:assert/strict";
import {
  type FromPreview,
  isFromPreview,
  isPreviewState,
  isToPreview,
  type ToPreview,
} from "../../src/preview/messages.js";

const start = { line: 3, character: 2 };
const range = { start, end: { line: 3, character: 9 } };
const question = { uri: "file:///a.tileplan", version: 4, wall: "back", x: 12.5, y: -30 };

const FROM: readonly FromPreview[] = [
  { type: "ready" },
  { type: "pin", pinned: true },
  { type: "mark", marked: false },
  { type: "room", shown: true },
  { type: "options", uri: "file:///a.tileplan", wall: null },
  { type: "options", uri: "file:///a.tileplan", wall: "back" },
  { type: "take", version: 4, group: 0, option: 1 },
  { type: "compare" },
  { type: "select", uri: "file:///a.tileplan", range },
  { type: "spot", id: 1, question },
  { type: "exported", format: "svg", data: "<svg/>" },
  { type: "painted", uri: "file:///a.tileplan", version: 4 },
  { type: "fault", message: "no canvas" },
];

const TO: readonly ToPreview[] = [
  { type: "plan", uri: "file:///a.tileplan", name: "a.tileplan", pinned: false, marked: true },
  { type: "gone", uri: "file:///a.tileplan", message: "a.tileplan was deleted" },
  { type: "changes", uri: "file:///a.tileplan", told: null },
  { type: "cursor", cursor: null },
  { type: "cursor", cursor: { uri: "file:///a.tileplan", position: start } },
  { type: "spot", id: 1, reading: null },
  {
    type: "options",
    options: { uri: "file:///a.tileplan", version: 4, wall: null, groups: [], more: 0 },
  },
  { type: "export", format: "png" },
];

describe("messages between the extension and the preview", () => {
  it("pass at their own end", () => {
    for (const message of FROM) assert.ok(isFromPreview(message), message.type);
    for (const message of TO) assert.ok(isToPreview(message), message.type);
  });

  it("don't pass when a key is missing or of another kind", () => {
    for (const message of FROM) {
      for (const key of Object.keys(message)) {
        assert.ok(!isFromPreview({ ...message, [key]: undefined }), `${message.type} ${key}`);
        assert.ok(!isFromPreview({ ...message, [key]: [] }), `${message.type} ${key}`);
      }
    }
    for (const message of TO) {
      for (const key of Object.keys(message)) {
        assert.ok(!isToPreview({ ...message, [key]: undefined }), `${message.type} ${key}`);
        assert.ok(!isToPreview({ ...message, [key]: [] }), `${message.type} ${key}`);
      }
    }
  });

  it("don't pass when they are nothing of the kind", () => {
    for (const stranger of [null, undefined, 3, "ready", [], {}, { type: "constructor" }]) {
      assert.ok(!isFromPreview(stranger));
      assert.ok(!isToPreview(stranger));
    }
  });

  it("don't pass with a place that is none", () => {
    const nowhere = { start, end: { line: 3, character: -1 } };
    assert.ok(!isFromPreview({ type: "select", uri: "file:///a.tileplan", range: nowhere }));
    assert.ok(!isFromPreview({ type: "spot", id: 1, question: { ...question, x: Number.NaN } }));
  });

  it("know a state to begin from", () => {
    assert.ok(isPreviewState({ uri: "file:///a.tileplan", pinned: true, view: { zoom: 2 } }));
    assert.ok(!isPreviewState({ uri: 3, pinned: true, marked: true }));
    assert.ok(!isPreviewState(undefined));
  });
});

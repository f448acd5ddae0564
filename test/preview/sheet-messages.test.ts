import assert from "node:assert/strict";
import {
  type FromSheet,
  isFromSheet,
  isSheetState,
  isToSheet,
  type ToSheet,
} from "../../src/preview/sheet-messages.js";

const TO: readonly ToSheet[] = [
  { type: "plan", uri: "file:///a.tileplan", name: "a.tileplan" },
  { type: "paper", paper: { title: "Bath", revision: null, pages: [] } },
  { type: "missing", why: "a.tileplan was deleted." },
];
const FROM: readonly FromSheet[] = [{ type: "ready" }, { type: "save" }, { type: "painted" }];

describe("messages between the extension and the page of a sheet", () => {
  it("pass at their own end alone", () => {
    for (const message of TO) assert.ok(isToSheet(message) && !isFromSheet(message), message.type);
    for (const message of FROM)
      assert.ok(isFromSheet(message) && !isToSheet(message), message.type);
  });

  it("don't pass when a key is missing", () => {
    for (const message of TO) {
      for (const key of Object.keys(message)) {
        const { [key]: _, ...rest } = message as Record<string, unknown>;
        assert.ok(!isToSheet(rest), `${message.type} without ${key}`);
      }
    }
  });

  it("begin a sheet from a state that names its plan", () => {
    assert.ok(isSheetState({ uri: "file:///a.tileplan" }));
    for (const other of [null, {}, { uri: 3 }, []]) assert.ok(!isSheetState(other));
  });
});

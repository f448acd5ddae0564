import assert from "node:assert/strict";
import { usesOf } from "../../src/service/used-files.js";
import { stateOf } from "./state-of.js";

describe("the uses of a text", () => {
  it("stand in its order with the file that each names, there or not", () => {
    const text = 'use "stock.tileplan"\nunits mm\nuse "rooms/none.tileplan"\n';
    assert.deepEqual(
      usesOf(stateOf(text)).map(({ file, statement }) => [file, statement.path.text]),
      [
        ["/plans/stock.tileplan", "stock.tileplan"],
        ["/plans/rooms/none.tileplan", "rooms/none.tileplan"],
      ],
    );
  });

  it("name no file outside the workspace", () => {
    assert.deepEqual(
      usesOf(stateOf('use "../stock.tileplan"\n')).map(({ file }) => file),
      [null],
    );
  });
});

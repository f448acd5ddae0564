import assert from "node:assert/strict";
import {
  heading,
  list,
  section,
  table,
  tableOfSome,
  text,
} from "../../../src/sheets/paper/blocks.js";

describe("blocks", () => {
  it("are tables whose figures stand to the right", () => {
    assert.deepEqual(table("Heights", ["Course", ">Height"], [["1", "4 in"]]), {
      kind: "table",
      caption: "Heights",
      columns: [
        { title: "Course", align: "left" },
        { title: "Height", align: "right" },
      ],
      rows: [["1", "4 in"]],
    });
  });

  it("are nothing where there is nothing to say", () => {
    assert.deepEqual(tableOfSome("Heights", ["Course"], []), []);
    assert.deepEqual(section("Courses", []), []);
  });

  it("stand under their heading", () => {
    assert.deepEqual(section("Courses", [text("one")]), [heading("Courses"), text("one")]);
    assert.deepEqual(list(["a"], true), { kind: "list", numbered: true, items: ["a"] });
    assert.deepEqual(list(["a"]), { kind: "list", numbered: false, items: ["a"] });
  });
});

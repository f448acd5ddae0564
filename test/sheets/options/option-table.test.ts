import assert from "node:assert/strict";
import { optionTables } from "../../../src/sheets/options/option-table.js";
import { bench, RUNNING, STATED } from "./bench.js";

const lines = (text: string): string[] => {
  const { solved, options } = bench(text);
  return [...optionTables(solved.plan, options)].join("").split("\n");
};

const rowOf = (text: string, name: string): string[] =>
  lines(text)
    .find((line) => line.trim().startsWith(name))!
    .slice(26)
    .trim()
    .split(/ {2,}/);

describe("optionTables", () => {
  it("has a column for each option, and the measures in the order in which they decide", () => {
    const { options } = bench(STATED);
    const [head] = lines(STATED).filter((line) => line.includes("A "));
    assert.deepEqual(
      head!.trim().split(/ +/),
      ["A", "B", "C", "D", "E", "F"].slice(0, options.length),
    );
    const names = lines(STATED).flatMap(
      (line) => /^ {4}(\w[\w* ]*?)(?: {2}|:)/.exec(line)?.[1] ?? [],
    );
    assert.deepEqual(names.slice(0, 5), [
      "slivers",
      "under half",
      "out of balance",
      "cuts*",
      "tiles begun",
    ]);
  });

  it("tells the ends of each course of the bond", () => {
    assert.ok(lines(STATED).some((line) => line.startsWith("    left end  ")));
    for (const name of ["left end, course 1", "right end, course 1", "left end, course 2"]) {
      assert.ok(
        lines(RUNNING).some((line) => line.startsWith(`    ${name}`)),
        name,
      );
    }
  });

  it("tells by how much a joint is over the range's lower end only where there is a range", () => {
    assert.ok(!lines(STATED).some((line) => line.includes("joint over")));
    const range = STATED.replace("joint 1/8\n", "joint 1/16 to 1/8\n").replace(
      / {4}(across|up) f.*\n/g,
      "",
    );
    assert.ok(lines(range).some((line) => line.includes("joint over")));
  });

  it("goes on in a further table where the width is full", () => {
    const { solved, options } = bench(STATED);
    const many = Array.from({ length: 12 }, (_, i) => options[i % options.length]!);
    const text = [...optionTables(solved.plan, many)].join("");
    assert.equal(text.match(/^ {4}slivers/gm)?.length, 2);
    for (const line of text.split("\n")) assert.ok(line.length <= 100, line);
    assert.equal(rowOf(STATED, "slivers").length, options.length);
  });
});

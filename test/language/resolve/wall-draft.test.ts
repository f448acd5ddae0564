import assert from "node:assert/strict";
import { planOf, resolveText, told } from "../telling.js";

const names = (text: string): string[] => planOf(text).walls.map(({ name }) => name);

describe("a wall", () => {
  it("without a size is told and left out", () => {
    const text = "wall a {\n  top ceiling\n}\nwall b {\n  size 4 x 5\n}\n";
    assert.deepEqual(told(text), [
      "plan/missing [a] found no `size`, wanted the bare wall's, such as `size 60 x 96`",
    ]);
    assert.deepEqual(names(text), ["b"]);
  });

  it("of up to a kilometre is taken, and past it told", () => {
    assert.deepEqual(told("wall a {\n  size 1000m x 1\n}\n"), []);
    assert.deepEqual(told("units m\nwall a {\n  size 1000.1 x 1\n}\n"), [
      "plan/wall-too-large [1000.1] found 1000.1 m, wanted a wall of at most 1000 m",
    ]);
  });

  it("declared twice is told, and the first stands", () => {
    const text = "wall a {\n  size 4 x 5\n}\nwall a {\n  size 6 x 7\n}\n";
    assert.deepEqual(told(text), [
      "plan/name-twice [a] found a wall called `a` again, wanted another name",
    ]);
    assert.deepEqual(
      planOf(text).walls.map(({ size }) => size.across / 25_400_000),
      [4],
    );
  });

  it("whose heading has lost its name is kept under a name of its own", () => {
    assert.deepEqual(names("wall {\n  size 4 x 5\n}\nwall b {\n  size 4 x 5\n}\n"), [
      "wall-1",
      "b",
    ]);
  });

  it("is named by what is told of it", () => {
    const { diagnostics } = resolveText("wall a {\n  size 4 x 0\n}\n");
    assert.deepEqual(
      diagnostics.map(({ wall }) => wall),
      ["a"],
    );
  });
});

import assert from "node:assert/strict";
import { startOrder } from "../../src/solver/start-order.js";
import { solveClean } from "../support/solve-text.js";
import { type DadoText, dadoText } from "../rooms/dado-text.js";
import { wrappedRoom } from "../rooms/wrapped-room.js";

const orderOf = (names: readonly string[]): string[] =>
  startOrder(solveClean(wrappedRoom({ names, declared: names })).plan.walls).map(
    ({ name }) => name,
  );

describe("the order in which walls are solved", () => {
  it("has a wall before those that go on from it, however they are declared", () => {
    const room = wrappedRoom({ declared: ["four", "three", "two", "one"] });
    const order = startOrder(solveClean(room).plan.walls).map(({ name }) => name);
    assert.deepEqual(order, ["one", "two", "three", "four"]);
  });

  it("is the plan's own where none goes on from a later one", () => {
    assert.deepEqual(orderOf(["one", "two", "three", "four"]), ["one", "two", "three", "four"]);
  });

  it("looks at all of a wall's lays", () => {
    const back = { dado: "across wrapped from side added" };
    const order = (parts: DadoText) => startOrder(solveClean(dadoText(parts)).plan.walls);
    assert.deepEqual(
      order({ back }).map(({ name }) => name),
      ["side", "back"],
    );
    assert.deepEqual(
      order({}).map(({ name }) => name),
      ["back", "side"],
    );
  });
});

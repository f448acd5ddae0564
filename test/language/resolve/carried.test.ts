import assert from "node:assert/strict";
import { parse, resolve } from "../../../src/language/index.js";
import { dadoText } from "../../rooms/dado-text.js";
import { cornerText } from "../../rules/corner-text.js";
import { wrappedRoom } from "../../rooms/wrapped-room.js";
import { ALONE } from "../../support/solve-text.js";

const read = (text: string) => resolve(parse(text), ALONE);
const codes = (text: string): string[] =>
  read(text).diagnostics.map(({ code, message }) => `${code} ${message}`);

describe("a start that goes on from another wall, as it is read", () => {
  it("knows the wall, the corner and what becomes of its joint", () => {
    const { plan } = read(cornerText({ side: { across: "wrapped from back swallowed" } }));
    assert.deepEqual(plan.walls[1]!.lays[0]!.across, {
      kind: "wrapped",
      wall: "back",
      corner: "left",
      joint: "swallowed",
    });
    const { plan: other } = read(cornerText({ across: "mirrored from side" }));
    assert.deepEqual(other.walls[0]!.lays[0]!.across, {
      kind: "mirrored",
      wall: "side",
      corner: "right",
    });
  });

  it("is told, and left open, where no corner joins the walls", () => {
    const text = cornerText({ side: { across: "mirrored from back", corner: "wall" } }).replace(
      "right corner side under movement 1/8",
      "right wall",
    );
    assert.deepEqual(codes(text), [
      "plan/start-corner found no corner with `back`, wanted a wall that this one meets at one corner",
    ]);
    assert.equal(read(text).plan.walls[1]!.lays[0]!.across, null);
  });

  it("is told where the name is the wall's own, or nobody's", () => {
    assert.match(
      codes(cornerText({ side: { across: "mirrored from side" } }))[0]!,
      /^plan\/start-corner/,
    );
    assert.match(
      codes(cornerText({ side: { across: "mirrored from bakc" } }))[0]!,
      /^plan\/name-unknown .*did you mean `back`/,
    );
  });

  it("can't be the walls' all round a room: the first is told and left to the solver, and the rest kept", () => {
    const text = wrappedRoom({ first: "wrapped from four added" });
    assert.deepEqual(codes(text), [
      "plan/start-circle found starts that go round in a circle (`one`, `four`, `three`, `two`, `one`), wanted one " +
        "wall with a start of its own: a bond that goes on all round a room can't close at its last corner",
    ]);
    const starts = read(text).plan.walls.map(({ lays }) => lays[0]!.across?.kind ?? null);
    assert.deepEqual(starts, [null, "wrapped", "wrapped", "wrapped"]);
  });

  it("is no circle from a wall that only leads into one", () => {
    const text = cornerText({
      across: "mirrored from side",
      side: { across: "mirrored from back" },
    });
    assert.equal(codes(text).filter((code) => code.startsWith("plan/start-circle")).length, 1);
  });

  it("is found through any of a wall's lays, and leaves that lay alone to the solver", () => {
    const text = dadoText({
      back: { dado: "across wrapped from side added" },
      side: { dado: "across mirrored from back", field: "across wrapped from back added" },
    });
    assert.deepEqual(codes(text), [
      "plan/start-circle found starts that go round in a circle (`back`, `side`, `back`), wanted one " +
        "wall with a start of its own: a bond that goes on all round a room can't close at its last corner",
    ]);
    const starts = read(text).plan.walls.map(({ lays }) =>
      lays.map(({ name, across }) => `${name} ${across?.kind ?? "open"}`),
    );
    assert.deepEqual(starts, [
      ["field full-tile", "dado open"],
      ["field wrapped", "dado mirrored"],
    ]);
  });
});

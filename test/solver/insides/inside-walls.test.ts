import assert from "node:assert/strict";
import { faceOf, insidesOf } from "./niche-text.js";

const meets = (
  parts: Parameters<typeof insidesOf>[0],
  face: "back" | "left" | "right" | "sill" | "head",
) => {
  const { edges } = faceOf(insidesOf(parts), face).wall;
  return Object.fromEntries(
    (["left", "right", "bottom", "top"] as const).map((side) => {
      const { meets, joint } = edges[side];
      const words = meets.kind === "corner" ? `${meets.lap} ${meets.wall}` : meets.kind;
      return [side, `${words}${joint ? ` ${joint.kind} ${joint.width / 1e6}` : ""}`];
    }),
  );
};

describe("a surface inside an opening, as a wall", () => {
  it("has its back under all others", () => {
    assert.deepEqual(meets({}, "back"), {
      left: "under back.shelf.left movement 2",
      right: "under back.shelf.right movement 2",
      bottom: "under back.shelf.sill movement 2",
      top: "under back.shelf.head movement 2",
    });
  });

  it("has its sides between the sill and the head, and a front that shows", () => {
    assert.deepEqual(meets({}, "left"), {
      left: "free",
      right: "over back.shelf.back movement 2",
      bottom: "over back.shelf.sill movement 2",
      top: "over back.shelf.head movement 2",
    });
    assert.equal(meets({}, "right").right, "free");
    assert.deepEqual(meets({}, "sill"), {
      left: "under back.shelf.left movement 2",
      right: "under back.shelf.right movement 2",
      bottom: "free",
      top: "over back.shelf.back movement 2",
    });
    assert.equal(meets({}, "head").top, "free");
  });

  it("meets a window itself", () => {
    assert.equal(meets({ kind: "window", niche: "depth 90mm" }, "sill").top, "wall movement 2");
  });

  it("has joints as wide as the wall's where the opening states none", () => {
    const text = { movement: "2mm", niche: "depth 90mm" };
    assert.equal(
      meets({ ...text, movement: "4mm" }, "left").top,
      "over back.shelf.head movement 4",
    );
  });

  it("ends behind a frame that stands in as far as the tile is thick", () => {
    const behind = meets({ niche: "depth 90mm\n frame nose mitre\n inset 11mm" }, "left");
    assert.equal(behind.left, "wall joint 2");
    const before = meets({ niche: "depth 90mm\n frame nose mitre\n inset 10mm" }, "left");
    assert.equal(before.left, "free");
  });

  it("is told by its wall and its opening, and allowed with them", () => {
    const { wall } = faceOf(
      insidesOf({ niche: 'depth 90mm\n allow cut/sliver "hidden by bottles"' }),
      "left",
    );
    assert.equal(wall.title, "back, niche shelf: left side");
    assert.deepEqual(
      wall.allows.map(({ code }) => code),
      ["cut/sliver"],
    );
  });
});

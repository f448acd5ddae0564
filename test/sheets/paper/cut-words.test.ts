import assert from "node:assert/strict";
import { cutSteps, KIND_WORDS } from "../../../src/sheets/paper/cut-words.js";
import type { Batch, PieceCut } from "../../../src/takeoff/index.js";
import { takeoff } from "../../../src/takeoff/index.js";
import { solveClean } from "../../support/solve-text.js";
import { inches, laid, planOf, wallText } from "../setting-out/plans.js";
import { formatLength } from "../../../src/measure/index.js";

const { lay } = laid(wallText());
const FACE = { left: 0, bottom: 0, right: inches(4), top: inches(4) };

function steps(cut: Partial<PieceCut>, keeps: Batch["keeps"] = ["left", "bottom"]): string[] {
  const whole: PieceCut = {
    kind: "notch",
    box: FACE,
    fences: [],
    tapers: [],
    notches: [],
    holes: [],
    mitres: [],
    ...cut,
  };
  const batch: Batch = {
    tile: lay.lay.tile,
    cut: whole,
    keeps,
    labels: ["B-01-01"],
    beyondSaw: [],
  };
  return cutSteps(batch, (nm) => formatLength(nm, "inch"));
}

describe("the steps of a cut", () => {
  it("set the fence from a factory edge that is named", () => {
    const box = { ...FACE, right: inches(2.5) };
    assert.deepEqual(
      steps({ box, fences: [{ along: "across", from: "left", keep: inches(2.5) }] }),
      ["fence at 2 1/2 in: keep that width from the left factory edge"],
    );
    assert.deepEqual(
      steps({ box, fences: [{ along: "up", from: "top", keep: inches(3) }] }, ["left"]),
      ["fence at 3 in: keep that height from the top edge"],
    );
  });

  it("tell a taper by what is left at its two ends", () => {
    const [first, last] = [inches(2.5), inches(2.75)];
    assert.deepEqual(steps({ tapers: [{ side: "bottom", from: 0, to: inches(4), first, last }] }), [
      "taper along the bottom: 2 1/2 in high at the left, 2 3/4 in at the right",
    ]);
    assert.deepEqual(steps({ tapers: [{ side: "right", from: 0, to: inches(4), first, last }] }), [
      "taper along the right: 2 1/2 in wide at the bottom, 2 3/4 in at the top",
    ]);
  });

  it("tell where a taper begins and ends where it is not the whole side", () => {
    const taper = { from: inches(1), to: inches(4), first: inches(4), last: inches(3) };
    assert.deepEqual(steps({ tapers: [{ side: "bottom", ...taper }] }), [
      "taper along the bottom: 4 in high at 1 in, 3 in at 4 in from its left",
    ]);
  });

  it("tell an edge that is as far in at both ends as a straight cut", () => {
    const cut = { from: 0, to: inches(1.5), first: inches(3), last: inches(3) };
    assert.deepEqual(steps({ tapers: [{ side: "left", ...cut }] }), [
      "straight cut along the left: 3 in wide between 0 in and 1 1/2 in from its bottom",
    ]);
  });

  it("tell what a riser takes beside a slope that rises from nothing as a taper and a straight cut", () => {
    // The floor rises from 1 in across to 1 1/2 in at 3 in, and falls back to nothing there.
    const outline = "outline 0, 0 to 1, 0 to 3, 1 1/2 to 3, 0 to 40, 0 to 40, 24 to 0, 24";
    const text = planOf(
      wallText()
        .replace(/^ *size .*$/m, `  ${outline}`)
        .replace(/ (movement|joint) 1\/8$/gm, " joint 0"),
    );
    const { batches } = takeoff(solveClean(text).solved).walls[0]!;
    const told = batches.flatMap((batch) => cutSteps(batch, (nm) => formatLength(nm, "inch")));
    assert.deepEqual(
      told.filter((step) => step.includes("along the")),
      [
        "taper along the bottom: 4 in high at 1 in, 2 1/2 in at 3 in from its left",
        "straight cut along the left: 1 in wide between 0 in and 1 1/2 in from its bottom",
      ],
    );
  });

  it("tell a notch by its size and where it begins from the edges it leaves", () => {
    const box = { left: inches(2.75), bottom: inches(3), right: inches(4), top: inches(4) };
    assert.deepEqual(steps({ notches: [{ opens: ["right", "top"], box }] }), [
      "notch, open to the right and top: 1 1/4 in across x 1 in up; " +
        "it begins 2 3/4 in from the left factory edge and 3 in from the bottom factory edge",
    ]);
  });

  it("measure a notch from a factory edge, and from a cut one where there is no other", () => {
    const notch = { left: inches(2), bottom: 0, right: inches(3), top: inches(1) };
    const piece = { ...FACE, left: inches(0.5), top: inches(3.5) };
    // The left is cut, so the right is measured from; the top is cut too, and the notch opens below.
    assert.deepEqual(
      steps({ box: piece, notches: [{ opens: ["bottom"], box: notch }] }, ["right", "bottom"]),
      [
        "notch, open to the bottom: 1 in across x 1 in up; " +
          "it begins 1 in from the right factory edge and 2 1/2 in from the top edge",
      ],
    );
    assert.deepEqual(steps({ notches: [{ opens: [], box: notch }] }), [
      "notch, inside: 1 in across x 1 in up; " +
        "it begins 2 in from the left factory edge and 0 in from the bottom factory edge",
    ]);
  });

  it("tell a hole by its centre from the tile's own edges, which may lie outside it", () => {
    const hole = {
      name: "valve",
      across: inches(1.5),
      fromLeft: inches(1),
      fromBottom: inches(-0.5),
      plate: null,
    };
    const words =
      "round hole valve, 1 1/2 in across: its centre 1 in from the tile's own left edge " +
      "and 1/2 in outside the tile's own bottom edge";
    assert.deepEqual(steps({ holes: [hole] }), [words]);
    const plate = { kind: "square", across: inches(4), up: inches(6) } as const;
    assert.deepEqual(steps({ holes: [{ ...hole, plate }] }), [
      `${words}; a plate of 4 in x 6 in will cover it`,
    ]);
  });

  it("tell a mitre by its hand, its length and how the blade leans", () => {
    assert.deepEqual(steps({ mitres: [{ side: "right", length: inches(4) }] }), [
      "mitre along the right, 4 in: back from the edge of the face, which stays whole, " +
        "by half the corner's angle (45 degrees where that is square)",
    ]);
  });

  it("have a word for each kind", () => {
    assert.deepEqual(Object.keys(KIND_WORDS), [
      ...["rip", "crosscut", "corner", "taper", "notch", "hole", "mitre"],
    ]);
  });
});

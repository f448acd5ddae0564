import assert from "node:assert/strict";
import { comparisonJson } from "../../src/compare/index.js";
import { comparisonOf, edited, WALL } from "./wall.js";

describe("comparisonJson", () => {
  const shown = (file: string) => `shown/${file}`;

  it("gives lengths in millimetres", () => {
    const comparison = comparisonOf(
      WALL,
      edited(WALL, ["top ceiling movement 1/8", "top ceiling movement 1/4"]),
    );
    const json = comparisonJson(comparison, shown) as {
      changed: boolean;
      walls: { facts: unknown[]; pieces: { kept: number; recut: unknown[] } }[];
      findings: { after: { file: string } }[];
    };
    assert.equal(json.changed, true);
    assert.deepEqual(json.walls[0]?.facts, [
      { subject: { of: "edge", side: "top" }, name: "soft joint", before: 3.175, after: 6.35 },
    ]);
    assert.deepEqual(json.walls[0].pieces.recut, [
      {
        count: 10,
        before: { cut: "rip", width: [101.6, 101.6], height: [50.8, 50.8], place: "along the top" },
        after: {
          cut: "rip",
          width: [101.6, 101.6],
          height: [47.625, 47.625],
          place: "along the top",
        },
        courses: { before: [6], after: [6] },
      },
    ]);
    assert.equal(json.findings[0]?.after.file, "shown/test.tileplan");
  });

  it("leaves out walls on which nothing changed, and gives each quantity's difference", () => {
    const json = comparisonJson(comparisonOf(WALL, WALL), shown);
    assert.deepEqual([json.changed, json.walls, json.findings], [false, [], []]);
    const [tile] = json.quantities as { difference: number }[];
    assert.equal(tile?.difference, 0);
  });
});

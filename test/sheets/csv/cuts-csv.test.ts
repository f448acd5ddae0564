import assert from "node:assert/strict";
import Papa from "papaparse";
import { cutsCsv } from "../../../src/sheets/csv/cuts-csv.js";
import { allCuts } from "../../../src/takeoff/index.js";
import { exampleNames } from "../../support/examples.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, exampleGround } from "../paper/sheet-bench.js";
import type { Ground } from "../../../src/sheets/paper/ground.js";

function rows({ solved, takeoff }: Ground): Record<string, string>[] {
  const text = [...cutsCsv(solved, takeoff)].join("");
  assert.ok(text.startsWith("\uFEFF"));
  const { data, errors } = Papa.parse<Record<string, string>>(text.slice(1), {
    header: true,
    skipEmptyLines: true,
  });
  assert.deepEqual(errors, []);
  return data;
}

describe("the cuts as CSV", () => {
  it("are a row a piece, with its size as it is read off and in millimetres", () => {
    const all = rows(benchGround(wallText()));
    assert.equal(all.length, 15);
    assert.deepEqual(
      all.find(({ Label }) => Label === "B-01-10"),
      {
        Label: "B-01-10",
        Wall: "back wall",
        Batch: "2",
        Kind: "crosscut",
        Tile: "4 x 4 tile",
        Width: "2 5/8 in",
        "Width mm": "66.675",
        Height: "4 in",
        "Height mm": "101.6",
        "Set and cut": "fence at 2 5/8 in (66.7 mm): keep that width from the left factory edge",
        "Factory edges kept": "left, bottom and top",
        "Not on this saw": "",
      },
    );
  });

  it("have each cut piece of every example once that is not set already", () => {
    for (const name of exampleNames()) {
      const ground = exampleGround(name);
      const wanted = allCuts(ground.takeoff.walls).flatMap(({ pieces }) =>
        pieces.filter(({ set }) => !set).map(({ label }) => label),
      );
      const found = rows(ground).map(({ Label }) => Label!);
      assert.deepEqual(found.sort(), wanted.sort(), name);
    }
  });
});

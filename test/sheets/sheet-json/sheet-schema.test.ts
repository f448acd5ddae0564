import assert from "node:assert/strict";
import { Ajv } from "ajv";
import { SHEET_SCHEMA } from "../../../src/sheets/sheet-json/sheet-schema.js";
import { exampleNames } from "../../support/examples.js";
import { mitredText } from "../../rooms/mitred-text.js";
import { planOf, wallText } from "../setting-out/plans.js";
import { exampleGround, groundFor } from "../paper/sheet-bench.js";
import { readSheet } from "./read-sheet.js";

/** The schema as if it allowed no key that it doesn't name: then it must name every one. */
function closed(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(closed);
  if (typeof schema !== "object" || schema === null) return schema;
  const entries = Object.entries(schema).map(([key, value]) => [key, closed(value)] as const);
  const open = Object.fromEntries(entries);
  return "properties" in open ? { ...open, additionalProperties: false } : open;
}

const ajv = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true });
const holds = ajv.compile(closed(SHEET_SCHEMA) as object);

const STOCKED = planOf(
  "saw {\n  kerf 3/32\n  rip 3\n}",
  'mortar "thin-set" {\n  bag 50 lb covers 40 sqft\n  price 24 a bag\n}',
  'grout "bone" {\n  density 1.6\n  bag 25 lb\n}',
  'sealant "bone" {\n  tube 10.1 floz\n}',
  wallText({ bond: "running 1/3", bottom: "tub measured 0: 0, 40: 1/2", up: "joint at 4" }),
  'wall bare "Bare" {\n  size 10 x 10\n}',
).replace(
  "face 4 x 4",
  'face 4 x 4\n  box 20\n  lot "7B"\n  spares 2\n  breakage 3%\n  price 40 a box',
);

describe("the JSON Schema of a sheet", () => {
  it("holds for every example, and names every key", () => {
    for (const name of exampleNames()) {
      assert.ok(holds(readSheet(exampleGround(name))), `${name}: ${ajv.errorsText(holds.errors)}`);
    }
  });

  it("holds for a plan with stock facts, a wall too large, a narrow one, a mitred corner and one without tile", () => {
    for (const text of [
      STOCKED,
      planOf(wallText({ size: "30000 x 30000" })),
      planOf(wallText({ size: "8 x 24" })),
      mitredText(),
      "units mm\n",
      'wall { "',
    ]) {
      assert.ok(holds(readSheet(groundFor(text))), ajv.errorsText(holds.errors));
    }
  });

  it("refuses a sheet with a part missing, or of another kind", () => {
    const whole = readSheet(exampleGround("back-wall.tileplan"));
    for (const key of Object.keys(whole)) {
      const { [key]: _, ...rest } = whole;
      assert.equal(holds(rest), false, key);
    }
    assert.equal(holds({ ...whole, schema: 2 }), false);
    assert.equal(
      holds({ ...whole, walls: [{ ...whole.walls[0], courses: [{ number: "1" }] }] }),
      false,
    );
  });
});

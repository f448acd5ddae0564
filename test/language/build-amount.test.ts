import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import type { Syntax } from "../../src/language/index.js";
import { fraction } from "../../src/measure/index.js";
import { told } from "./telling.js";

function tubeOf(line: string): Syntax.TubeStatement {
  const [block] = parse(`sealant {\n  ${line}\n}\n`).statements;
  const part = block?.kind === "sealant" ? block.body[0] : undefined;
  assert.ok(part?.kind === "tube");
  return part;
}

function toldOf(block: string, line: string): string[] {
  return told(`${block} {\n  ${line}\n}\n`);
}

describe("an amount", () => {
  it("has its unit behind the number, or in it", () => {
    const [apart, joined] = [tubeOf("tube 10.1 floz"), tubeOf("tube 10.1floz")];
    assert.deepEqual(apart.volume.number, fraction(101n, 10n));
    assert.deepEqual(joined.volume.number, apart.volume.number);
    const places = [apart, joined].map(({ volume: { start, end, unit } }) => [
      start,
      end,
      unit && [unit.text, unit.start, unit.end],
    ]);
    assert.deepEqual(places, [
      [17, 26, ["floz", 22, 26]],
      [17, 25, ["floz", 21, 25]],
    ]);
  });

  it("may be negative, so that it can be told", () => {
    const { volume } = tubeOf("tube -3 l");
    assert.deepEqual(volume.number, fraction(-3n));
    assert.deepEqual([volume.start, volume.end], [17, 21]);
  });

  it("has one unit alone", () => {
    assert.deepEqual(toldOf("sealant", "tube 10ml ml"), [
      "syntax/number [ml] found `ml` behind a unit, wanted one unit",
    ]);
  });

  it("whose number can't be read is told at the part that is wrong", () => {
    assert.deepEqual(toldOf("sealant", "tube 10 1/0 l"), [
      "syntax/number [1/0] found `1/0`, wanted a fraction over something other than zero",
    ]);
  });
});

describe("a number", () => {
  it("has no unit", () => {
    assert.deepEqual(toldOf("grout", "density 1.6kg"), [
      "syntax/number [kg] found the unit `kg`, wanted a number without a unit",
    ]);
  });
});

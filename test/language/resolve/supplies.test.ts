import assert from "node:assert/strict";
import type { Origin } from "../../../src/model/index.js";
import { FULL, INCH, planOf, told } from "../telling.js";

function bare(thing: { readonly origin: Origin } | null): object {
  const { origin: _, ...rest } = thing!;
  return rest;
}

describe("saw, mortar, grout and sealant", () => {
  it("have all that their blocks say", () => {
    const { saw, mortar, grout, sealant } = planOf(FULL);
    assert.deepEqual(bare(saw), { kerf: (3 * INCH) / 32, longest: 24 * INCH });
    assert.deepEqual(bare(mortar), {
      title: "white, for glazed tile",
      notch: { width: INCH / 4, depth: (3 * INCH) / 8 },
      bag: { mass: 22_679_619, covers: 3_716_122 },
      backButter: INCH / 16,
      price: 2_400,
    });
    assert.deepEqual(bare(grout), {
      title: "warm grey",
      density: 1_600,
      bag: { mass: 11_339_809 },
      price: 3_100,
    });
    assert.deepEqual(bare(sealant), {
      title: "",
      tube: 298_693,
      depth: INCH / 4,
      price: 900,
    });
  });

  it("leave unsaid what their blocks leave unsaid", () => {
    const { saw, mortar, grout, sealant } = planOf(
      "saw {\n}\nmortar {\n}\ngrout {\n}\nsealant {\n}\n",
    );
    assert.deepEqual(bare(saw), { kerf: null, longest: null });
    assert.deepEqual(bare(mortar), {
      title: "",
      notch: null,
      bag: null,
      backButter: null,
      price: null,
    });
    assert.deepEqual(bare(grout), { title: "", density: null, bag: null, price: null });
    assert.deepEqual(bare(sealant), { title: "", tube: null, depth: null, price: null });
  });

  it("are known by the place of their keyword", () => {
    const { head, range } = planOf("\nsaw {\n}\n").saw!.origin;
    assert.deepEqual(head, { start: { line: 1, character: 0 }, end: { line: 1, character: 3 } });
    assert.deepEqual(range.end, { line: 2, character: 1 });
  });

  it("are said once, and so is each of their facts", () => {
    assert.deepEqual(told("grout {\n}\ngrout {\n}\n"), [
      "plan/said-twice [grout] found `grout` again, wanted it once in this block",
    ]);
    assert.deepEqual(told("sealant {\n  depth 1/4\n  depth 1/8\n}\n"), [
      "plan/said-twice [depth] found `depth` again, wanted it once in this block",
    ]);
    assert.deepEqual(told("grout {\n  price 1 a bag\n  price 2 a bag\n}\n"), [
      "plan/said-twice [price] found `price` again, wanted it once in this block",
    ]);
  });

  it("have lengths of more than zero, but for the kerf of a scoring cutter", () => {
    const zero: Readonly<Record<string, string>> = {
      "rip 0": "saw",
      "back-butter 0": "mortar",
      "notch 0 x 0": "mortar",
      "depth 0": "sealant",
    };
    for (const [line, block] of Object.entries(zero)) {
      for (const message of told(`${block} {\n  ${line}\n}\n`)) {
        assert.equal(message, "plan/size [0] found 0 in, wanted more than zero");
      }
      assert.ok(told(`${block} {\n  ${line}\n}\n`).length > 0);
    }
    assert.equal(planOf("saw {\n  kerf 0\n}\n").saw!.kerf, 0);
    assert.deepEqual(told("saw {\n  kerf -1/8\n}\n"), [
      "plan/size [-1/8] found -1/8 in, wanted zero or more",
    ]);
  });
});

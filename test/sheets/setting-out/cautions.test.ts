import assert from "node:assert/strict";
import { cautionLines } from "../../../src/sheets/setting-out/cautions.js";
import { mitredText } from "../../rooms/mitred-text.js";
import { outsideText } from "../../rooms/outside-text.js";
import { solveClean } from "../../support/solve-text.js";
import { laid, wallText } from "./plans.js";

const SASH = "  window sash {\n    at 14, 9\n    size 10 x 7\n    movement 1/8\n  }";

const told = (...walls: string[]) => cautionLines(laid(...walls).plan).join("\n");

// Sources: OSHA 29 CFR 1926.1153 Table 1; 29 CFR 1926.404(b)(1); IRC R308.4.5 (from memory).
describe("cautions", () => {
  it("name silica dust, saws near water and old backing with their sources", () => {
    assert.match(told(wallText()), /silica.*OSHA 29 CFR 1926\.1153, Table 1/);
    assert.match(told(wallText()), /GFCI.*drip loop \(29 CFR 1926\.404\(b\)\(1\)\)/);
    assert.match(told(wallText()), /before 1980 is tested for asbestos, from before 1978 for lead/);
  });

  it("defer to local code, the makers and licensed trades, last and always", () => {
    const empty = cautionLines(solveClean("units inch\n").solved);
    assert.equal(empty.length, 1);
    assert.match(empty[0]!, /local code, the makers' instructions and a licensed trade/);
    assert.equal(told(wallText()).endsWith(empty[0]!), true);
  });

  it("speak of waterproofing and a flood test over a pan or tub alone", () => {
    assert.doesNotMatch(told(wallText()), /flood test/);
    assert.match(told(wallText({ bottom: "pan" })), /waterproofed.*flood test/);
  });

  it("speak of safety glazing where a window is in a wet plan alone", () => {
    assert.doesNotMatch(told(wallText({ inside: SASH })), /glazing/);
    assert.doesNotMatch(told(wallText({ bottom: "pan" })), /glazing/);
    assert.match(told(wallText({ bottom: "pan", inside: SASH })), /R308\.4\.5, from memory/);
  });

  it("speak of thin edges where tile is mitred alone (common practice)", () => {
    const lines = (text: string) => cautionLines(solveClean(text).solved).join("\n");
    assert.doesNotMatch(lines(outsideText()), /mitred edge/);
    assert.match(
      lines(mitredText()),
      /mitred edge is thin and sharp.*dust.*eye protection, gloves.*\(common practice\)/,
    );
  });
});

import assert from "node:assert/strict";
import { exampleText } from "../../support/examples.js";
import { edited, Plans } from "../plans.js";
import { codesOf } from "./mending.js";

describe("allowing a finding", () => {
  it("silences it with a reason, for every finding of the plan of faults", () => {
    const text = exampleText("faults.tileplan");
    const plans = new Plans();
    const told = new Set(
      codesOf(text, plans).filter((code) => !/^(allow|plan|syntax)\//.test(code)),
    );
    assert.ok(told.size >= 10);
    for (const code of told) {
      const before = codesOf(text, plans).filter((each) => each === code).length;
      // At its own place: of a whole plan, only the first findings are mended.
      const document = plans.open(text);
      const { range } = plans.service.diagnostics(document).find((each) => each.code === code)!;
      const fixes = plans.service
        .fixes(document, range)
        .filter(({ mends, title }) => mends?.code === code && title.startsWith("Allow"));
      assert.ok(fixes.length > 0, code);
      for (const { edits } of fixes) {
        const mended = edited(text, edits);
        const after = codesOf(mended, plans).filter((each) => each === code).length;
        assert.ok(after < before, `${code}: ${before} before, ${after} after`);
        const unused = (of: string): number =>
          codesOf(of, plans).filter((each) => each === "allow/unused").length;
        assert.equal(unused(mended), unused(text), code);
      }
    }
  });
});

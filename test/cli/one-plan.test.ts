import assert from "node:assert/strict";
import type { Host } from "../../src/cli/host.js";
import { outputPath, runOnePlan, sayFindings } from "../../src/cli/one-plan.js";
import { CLEAN, FAULTY } from "./plans.js";
import { workplace } from "./workplace.js";

describe("one plan", () => {
  const place = workplace({ "clean.tileplan": CLEAN, "faulty.tileplan": FAULTY });

  function host(err: (text: string) => void = () => undefined): Host {
    return {
      folder: place.folder,
      colours: { out: false, err: false },
      readStandardInput: () => Promise.resolve(new Uint8Array()),
      out: () => Promise.resolve(),
      err,
      watched: false,
      worker: null,
      assets: "",
    };
  }

  it("is read, solved and checked", async () => {
    const one = await runOnePlan({ file: "faulty.tileplan", root: null }, host());
    assert.equal(one.outcome.plan.title, "Test bench");
    assert.deepEqual(
      one.diagnostics.map((found) => found.code),
      ["joint/too-narrow"],
    );
  });

  it("says nothing where nothing was found", async () => {
    let text = "";
    const one = await runOnePlan({ file: "clean.tileplan", root: null }, host());
    assert.equal(
      sayFindings(
        one,
        true,
        host((part) => (text += part)),
      ),
      0,
    );
    assert.equal(text, "");
  });

  it("is not written over, whichever way its path is given", async () => {
    const one = await runOnePlan({ file: "clean.tileplan", root: null }, host());
    assert.throws(() => outputPath("x/../clean.tileplan", one, host()), /is the plan itself/);
    assert.equal(outputPath("a.svg", one, host()), place.path("a.svg"));
  });
});

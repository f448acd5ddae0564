import assert from "node:assert/strict";
import { exampleText } from "../support/examples.js";
import { Plans, STOCK_FILE, wallPlan } from "./plans.js";

describe("diagnostics", () => {
  it("carry the published source and where it can be read", () => {
    const plans = new Plans();
    const told = plans.service.diagnostics(plans.open(exampleText("faults.tileplan")));
    const narrow = told.find(({ code }) => code === "joint/too-narrow")!;
    assert.match(narrow.source!, /^ANSI A108\.02 4\.3\.8/);
    assert.equal(narrow.link, "https://tileletter.com/what-is-minimum-grout-joint");
    const sliver = told.find(({ code }) => code === "cut/sliver")!;
    assert.deepEqual([sliver.source, sliver.link], ["common practice", null]);
  });

  it("show what is allowed as hints, with the reason", () => {
    const plans = new Plans();
    const told = plans.service.diagnostics(plans.open(exampleText("back-wall.tileplan")));
    const allowed = told.find(({ code }) => code === "movement/narrow")!;
    assert.equal(allowed.severity, "hint");
    assert.match(allowed.message, /\(allowed: the frame's flange leaves no more room\)$/);
  });

  it("come with the places that explain them", () => {
    const plans = new Plans();
    const [twice] = plans.service.diagnostics(plans.open("let a = 1\nlet a = 2\n"));
    assert.equal(twice!.code, "plan/name-twice");
    assert.deepEqual(
      twice!.related.map(({ range }) => range.start),
      [{ line: 0, character: 4 }],
    );
  });

  it("tell a fault of a used file at the use, with its place", () => {
    const plans = new Plans({ [STOCK_FILE]: "tile pressed {\n  face 3 x\n}\n" });
    const told = plans.service.diagnostics(plans.open('use "stock.tileplan"\n'));
    assert.equal(told[0]!.code, "plan/use-fault");
    assert.deepEqual(told[0]!.range.start, { line: 0, character: 4 });
    assert.equal(told[0]!.related[0]!.file, STOCK_FILE);
  });

  it("follow a used file's change without a change of the text", () => {
    const plans = new Plans();
    const document = plans.open(wallPlan("    joint 1/16\n"));
    const codes = (): string[] => plans.service.diagnostics(document).map(({ code }) => code);
    assert.ok(!codes().includes("plan/name-unknown"));
    plans.texts.set(STOCK_FILE, "units inch\n");
    assert.ok(codes().includes("plan/name-unknown"));
    assert.deepEqual(plans.service.usedFiles(document), [STOCK_FILE]);
  });

  it("are solved once for a version", () => {
    const plans = new Plans();
    const document = plans.open(exampleText("three-walls.tileplan"));
    assert.equal(plans.service.picture(document).scene, plans.service.picture(document).scene);
  });
});

import assert from "node:assert/strict";
import { sarifLog } from "../../src/cli/report-sarif.js";
import type { Diagnostic } from "../../src/model/index.js";
import { RULES } from "../../src/rules/index.js";
import { assertSarif, isSarif } from "./sarif-schema.js";

const FOUND: Diagnostic = {
  code: "cut/sliver",
  severity: "error",
  message: "the piece is 1/2 in wide",
  file: "/job/my walls/a.tileplan",
  range: { start: { line: 2, character: 4 }, end: { line: 2, character: 10 } },
  wall: "back",
  pieces: ["back/1/1"],
  source: "common practice",
};

describe("sarifLog", () => {
  it("is valid by the published schema, empty or with every kind of finding", () => {
    assertSarif(sarifLog([], [], "/job"));
    const related = [{ file: "/stock.tileplan", range: FOUND.range, message: "here" }];
    const found: Diagnostic[] = [
      FOUND,
      { ...FOUND, severity: "warning", related, allowed: "why" },
      { ...FOUND, severity: "information", code: "syntax/length" },
    ];
    assertSarif(sarifLog(found, [FOUND.file], "/job"));
  });

  it("is told from a log that is not valid", () => {
    const log = sarifLog([FOUND], [FOUND.file], "/job") as { version: string };
    assert.ok(!isSarif({ ...log, version: "3" }));
  });

  it("lists every rule with its title, source and level, and each result points at its own", () => {
    const [run] = sarifLog([FOUND, { ...FOUND, code: "syntax/length" }], [], "/job").runs;
    const { rules } = run!.tool.driver;
    for (const { code, title } of RULES) {
      assert.equal(rules!.find((rule) => rule.id === code)?.shortDescription?.text, title);
    }
    for (const result of run!.results!) assert.equal(rules![result.ruleIndex!]!.id, result.ruleId);
    assert.equal(rules!.at(-1)!.id, "syntax/length");
  });

  it("counts lines and columns from one and names files relative to the working folder", () => {
    const [result] = sarifLog([FOUND], [], "/job").runs[0]!.results!;
    assert.deepEqual(result!.locations![0]!.physicalLocation, {
      artifactLocation: { uri: "my%20walls/a.tileplan" },
      region: { startLine: 3, startColumn: 5, endLine: 3, endColumn: 11 },
    });
  });

  it("names a file elsewhere in full", () => {
    const related = [{ file: "/stock.tileplan", range: FOUND.range, message: "here" }];
    const [result] = sarifLog([{ ...FOUND, related }], [], "/job").runs[0]!.results!;
    const [place] = result!.relatedLocations!;
    assert.equal(place!.physicalLocation!.artifactLocation!.uri, "file:///stock.tileplan");
    assert.equal(place!.message!.text, "here");
  });

  it("suppresses an allowed finding with its reason, and says of the others that they stand", () => {
    const { results } = sarifLog([FOUND, { ...FOUND, allowed: "why" }], [], "/job").runs[0]!;
    assert.deepEqual(results![0]!.suppressions, []);
    assert.deepEqual(results![1]!.suppressions, [{ kind: "inSource", justification: "why" }]);
  });
});

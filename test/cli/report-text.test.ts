import assert from "node:assert/strict";
import { paintFor } from "../../src/cli/colours.js";
import { textReport } from "../../src/cli/report-text.js";
import type { Diagnostic, SourceRange } from "../../src/model/index.js";

const TEXTS: Readonly<Record<string, string>> = {
  "/job/a.tileplan": `units inch\nlay field {\n\tjoint 1/32\n}\n`,
  "/job/stock.tileplan": `tile field "white" {\n  variation 1/64\n}\n`,
};

function on(line: number, from: number, to: number): SourceRange {
  return { start: { line, character: from }, end: { line, character: to } };
}

const NARROW: Diagnostic = {
  code: "joint/too-narrow",
  severity: "error",
  message: "the joint is 1/32 in; at least 1/16 in is wanted",
  file: "/job/a.tileplan",
  range: on(2, 1, 6),
  wall: "back",
  source: "ANSI A108.02 4.3.8",
  related: [
    {
      file: "/job/stock.tileplan",
      range: on(1, 2, 11),
      message: "the tile's faces vary by 1/64 in",
    },
  ],
};

function report(found: readonly Diagnostic[], colours = false): string {
  const sources = {
    textOf: (file: string) => TEXTS[file] ?? "",
    shownPath: (file: string) => file.replace("/job/", ""),
  };
  return [...textReport(found, sources, paintFor(colours))].join("");
}

describe("textReport", () => {
  it("shows the place, what was found and wanted, the line, the source and what explains it", () => {
    assert.equal(
      report([NARROW]),
      `a.tileplan:3:2: error: the joint is 1/32 in; at least 1/16 in is wanted [joint/too-narrow]
 3 |     joint 1/32
   |     ^^^^^
   wall back
   source ANSI A108.02 4.3.8
   see stock.tileplan:2:3: the tile's faces vary by 1/64 in
 2 |   variation 1/64
   |   ^^^^^^^^^

`,
    );
  });

  it("names the first pieces and counts the rest", () => {
    const pieces = Array.from({ length: 9 }, (_, i) => `back/1/${i + 1}`);
    const { related: _, source: __, ...found } = NARROW;
    assert.match(
      report([{ ...found, pieces }]),
      /\n {3}pieces back\/1\/1, back\/1\/2, .*back\/1\/6 and 3 more\n\n$/,
    );
    assert.match(report([{ ...found, pieces: ["back/1/1"] }]), /\n {3}piece back\/1\/1\n/);
  });

  it("calls information a note", () => {
    assert.match(report([{ ...NARROW, severity: "information" }]), /^a\.tileplan:3:2: note: the/);
  });

  it("shows allowed findings at the end, with their reasons", () => {
    const text = report([{ ...NARROW, allowed: "a mock-up was approved" }, NARROW]);
    assert.match(text, /^a\.tileplan:3:2: error/);
    assert.ok(
      text.endsWith(`
Allowed by the plan:
a.tileplan:3:2: the joint is 1/32 in; at least 1/16 in is wanted [joint/too-narrow]
   reason a mock-up was approved

`),
      text,
    );
  });

  it("leaves the line out where the text has none", () => {
    const { related: _, wall: __, source: ___, ...found } = NARROW;
    assert.equal(
      report([{ ...found, file: "/job/gone" }]),
      "gone:3:2: error: the joint is 1/32 in; at least 1/16 in is wanted [joint/too-narrow]\n\n",
    );
  });

  it("colours the severity and the carets alike, and nothing when colours are off", () => {
    const coloured = report([NARROW], true);
    assert.ok(coloured.includes("\u001b[1;31merror\u001b[0m"));
    assert.ok(coloured.includes("\u001b[1;31m^^^^^\u001b[0m"));
    // eslint-disable-next-line no-control-regex -- the escape is what is looked for
    assert.equal(coloured.replace(/\u001b\[[\d;]*m/g, ""), report([NARROW]));
  });

  it("lets no text of the plan drive the terminal", () => {
    const found = { ...NARROW, message: "unknown name \u001b[2J", allowed: "\u001b]0;x" };
    assert.ok(!report([found, { ...NARROW, message: "\u001b[2J" }]).includes("\u001b"));
  });
});

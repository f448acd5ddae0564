import assert from "node:assert/strict";
import { readArguments } from "../../src/cli/arguments.js";
import { Failure } from "../../src/cli/failure.js";

function read(line: string): unknown {
  return readArguments(line.split(" ").filter((word) => word !== ""));
}

/** What is said about words that can't be understood: the message and its hint. */
function said(line: string): string {
  try {
    read(line);
  } catch (error) {
    assert.ok(error instanceof Failure, String(error));
    return `${error.message} | ${error.hint ?? ""}`;
  }
  return "nothing";
}

describe("readArguments", () => {
  it("reads a check with its defaults", () => {
    assert.deepEqual(read("check a.tileplan walls -"), {
      command: "check",
      places: ["a.tileplan", "walls", "-"],
      format: "text",
      shard: null,
      strict: false,
      root: null,
    });
  });

  it("reads options before and after the files, with and without =", () => {
    const wanted = {
      command: "check",
      places: ["a", "b"],
      format: "sarif",
      shard: null,
      strict: true,
      root: "..",
    };
    assert.deepEqual(read("check --strict a --format sarif b --root .."), wanted);
    assert.deepEqual(read("check a b --format=sarif --strict --root=.."), wanted);
  });

  it("takes words after -- as files", () => {
    assert.deepEqual((read("check -- --strict") as { places: string[] }).places, ["--strict"]);
  });

  it("reads solve and draw", () => {
    const common = { file: "a", strict: false, root: null };
    assert.deepEqual(read("solve a"), {
      command: "solve",
      format: "text",
      output: null,
      ...common,
    });
    assert.deepEqual(read("solve a --format json -o b.json"), {
      command: "solve",
      format: "json",
      output: "b.json",
      ...common,
    });
    assert.deepEqual(read("draw a -o -"), { command: "draw", output: "-", room: false, ...common });
  });

  it("gives help in general and for a command, and the version", () => {
    for (const line of ["", "--help", "-h", "help"]) {
      assert.deepEqual(read(line), { command: "help", about: null });
    }
    for (const line of ["help draw", "draw --help", "draw a -h"]) {
      assert.deepEqual(read(line), { command: "help", about: "draw" });
    }
    assert.deepEqual(read("--version"), { command: "version" });
  });

  it("says what was found, what was wanted, and the nearest name", () => {
    assert.equal(said("chekc a"), `unknown command "chekc" | did you mean check?`);
    assert.match(
      said("constructor a"),
      /^unknown command "constructor" \| the commands are check, solve, options, draw, .* and /,
    );
    assert.equal(
      said("check a --formt json"),
      "check has no option --formt | did you mean --format?",
    );
    assert.equal(
      said("check a -x"),
      "check has no option -x | its options: gaugelath check --help",
    );
    assert.equal(
      said("check a --format xml"),
      `unknown format "xml" | the formats are text, json, sarif`,
    );
    assert.equal(
      said("solve a --format sarif"),
      `unknown format "sarif" | the formats are text, json`,
    );
  });

  it("asks for what is missing", () => {
    const more = (command: string): string => `with examples: gaugelath ${command} --help`;
    assert.equal(
      said("check"),
      `check wants a plan to check (a file, a folder, or -) | ${more("check")}`,
    );
    assert.equal(said("solve"), `solve wants a plan to solve (a file, or -) | ${more("solve")}`);
    assert.equal(said("draw a"), `draw wants -o OUT.svg, the picture to write | ${more("draw")}`);
    assert.equal(said("draw a -o"), "-o wants a file to write after it | ");
    assert.equal(said("check a --format"), "--format wants a format after it | ");
  });

  it("refuses what is said twice or too much", () => {
    assert.equal(said("solve a b"), `solve takes one plan; found "b" as well | `);
    assert.equal(said("draw a -o b -o c"), "-o is given twice | ");
    assert.equal(said("check a --strict=no"), "--strict takes no value | ");
    assert.equal(
      said("--strict"),
      "unknown option --strict | a command comes first: gaugelath --help",
    );
  });

  it("reads a comparison of two places, or of revisions", () => {
    const plain = {
      command: "compare",
      places: ["a", "b"],
      from: null,
      to: null,
      format: "text",
      output: null,
      failOn: [],
      shard: null,
      strict: false,
      root: null,
    };
    assert.deepEqual(read("compare a b"), plain);
    assert.deepEqual(
      read("compare --from HEAD~1 --to main --format markdown -o out --fail-on any,more-tiles a"),
      {
        ...plain,
        places: ["a"],
        from: "HEAD~1",
        to: "main",
        format: "markdown",
        output: "out",
        failOn: ["any", "more-tiles"],
      },
    );
    assert.deepEqual((read("compare --from HEAD") as { places: string[] }).places, ["."]);
  });

  it("says what a comparison wants", () => {
    const forms = "compare OLD NEW, or compare --from REV [--to REV] FILE...";
    assert.equal(said("compare"), `compare wants two plans or two folders; found none | ${forms}`);
    assert.equal(said("compare a"), `compare wants two plans or two folders; found 1 | ${forms}`);
    assert.equal(said("compare --to a"), `--to wants --from REV, the revision before | ${forms}`);
    assert.equal(
      said("compare a b --fail-on all"),
      '--fail-on does not know "all" | it knows new-findings, more-tiles, any',
    );
  });

  it("reads a shard, one part of several", () => {
    assert.deepEqual((read("check a --shard 2/4") as { shard: unknown }).shard, { part: 2, of: 4 });
    for (const wrong of ["0/4", "5/4", "1", "a/b", "1/0", "-1/4"]) {
      assert.match(said(`check a --shard=${wrong}`), /one part of several is wanted, such as 2\/4/);
    }
  });

  it("reads what is shown and what is merged", () => {
    assert.deepEqual(read("show a"), { command: "show", file: "a", strict: false, root: null });
    assert.deepEqual(read("merge a b -o c"), { command: "merge", files: ["a", "b"], output: "c" });
    assert.match(said("merge"), /merge wants reports to merge/);
  });
});

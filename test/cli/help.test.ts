import assert from "node:assert/strict";
import { readArguments } from "../../src/cli/arguments.js";
import { helpText } from "../../src/cli/help.js";
import type { CommandName } from "../../src/cli/request.js";

const COMMANDS: readonly CommandName[] = ["check", "solve", "options", "draw"];

describe("the help", () => {
  it("fits a terminal of 100 columns", () => {
    for (const about of [null, ...COMMANDS]) {
      for (const line of helpText(about).split("\n")) assert.ok(line.length <= 100, line);
    }
  });

  it("shows examples that the command understands", () => {
    for (const about of COMMANDS) {
      const examples = helpText(about).split("Examples:\n")[1]!.split("\n\n")[0]!.split("\n");
      assert.ok(examples.length >= 2);
      for (const example of examples) {
        const words = /gaugelath ([^|<>]*)/.exec(example)![1]!.trim().split(" ");
        assert.equal(readArguments(words).command, about, example);
      }
    }
  });

  it("names every option of a command", () => {
    assert.match(helpText("check"), /--format text\|json\|sarif/);
    for (const about of COMMANDS) {
      for (const option of ["--strict", "--root FOLDER", "-h, --help"]) {
        assert.ok(helpText(about).includes(option), `${about} ${option}`);
      }
    }
    for (const about of ["solve", "options", "draw"] as const)
      assert.match(helpText(about), /-o, --output OUT/);
  });

  it("names every command in general", () => {
    for (const about of COMMANDS) assert.match(helpText(null), new RegExp(`\n  ${about} `));
  });
});

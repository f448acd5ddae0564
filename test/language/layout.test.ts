import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import type { Syntax } from "../../src/language/index.js";
import { FULL, told } from "./telling.js";

/** Every statement of a text by its place in the blocks; a block without what is in it. */
function statementsOf(text: string): string[] {
  const found: string[] = [];
  const walk = (statements: readonly Syntax.Statement[], path: string): void => {
    for (const statement of statements) {
      const name = "name" in statement && statement.name ? ` ${statement.name.text}` : "";
      const block = "body" in statement ? statement.body : null;
      const own = block ? name : ` ${text.slice(statement.start, statement.end)}`;
      const place = `${path}/${statement.kind}${own}`;
      if (statement.kind !== "broken") found.push(place);
      if (block) walk(block, place);
    }
  };
  walk(parse(text).statements, "");
  return found;
}

const lines = FULL.split("\n");
const whole = statementsOf(FULL);

/** The statements that line `i` says or, when it heads a block, those of its block. */
function ofLine(i: number): (place: string) => boolean {
  const line = lines[i]!.replace(/#.*/, "").trim();
  if (!line.endsWith("{"))
    return (place) => line.split(", ").some((part) => part !== "" && place.includes(part));
  const indent = lines[i]!.search(/\S/);
  const after = lines
    .slice(i + 1)
    .findIndex((other) => other.trim() !== "" && other.search(/\S/) <= indent);
  const kept = [...lines.slice(0, i), ...lines.slice(i + after + 2)].join("\n");
  const outside = new Set(statementsOf(kept));
  return (place) => !outside.has(place);
}

/** What is lost of the plan, besides what line `i` says, when that line is changed. */
function lostBy(i: number, change: (line: string) => string): string[] {
  const changed = [...lines.slice(0, i), change(lines[i]!), ...lines.slice(i + 1)].join("\n");
  const kept = new Set(statementsOf(changed));
  return whole.filter((place) => !kept.has(place) && !ofLine(i)(place));
}

describe("a broken line", () => {
  const changes: Record<string, (line: string) => string> = {
    "replaced by strange characters": (line) => `${/^\s*/.exec(line)![0]}%%% ???`,
    "replaced by strange words": (line) => `${/^\s*/.exec(line)![0]}zzz qqq 4`,
    "with a stray character first": (line) => line.replace(/\S/, "@$&"),
    "without its first word": (line) => line.replace(/\w+/, ""),
    "without its last word": (line) => line.replace(/#.*/, "").trimEnd().replace(/\S+$/, ""),
    "without its first number": (line) => line.replace(/\d+/, ""),
    "without a quote": (line) => line.replace('"', ""),
    "without its brace": (line) => line.replace(/[{}]/, ""),
    "with a `{` too many": (line) => `${line.replace(/#.*/, "")} {`,
    "with a `}` too many": (line) => `${line.replace(/#.*/, "")} }`,
    "with a parenthesis too many": (line) => `${line.replace(/#.*/, "")} (`,
    "taken out": () => "",
    "said twice on one line": (line) => `${line.replace(/#.*/, "")} ${line.trim()}`,
  };
  for (const [name, change] of Object.entries(changes)) {
    it(`costs no other line: ${name}`, () => {
      for (const i of lines.keys()) {
        assert.deepEqual(lostBy(i, change), [], `line ${i + 1}: ${change(lines[i]!)}`);
      }
    });
  }

  it("is told, and little else with it", () => {
    for (const [name, change] of Object.entries(changes)) {
      for (const [i, line] of lines.entries()) {
        const text = [...lines.slice(0, i), change(line), ...lines.slice(i + 1)].join("\n");
        const { problems } = parse(text);
        assert.ok(
          problems.length <= 3,
          `${name}, line ${i + 1}: ${problems.map(({ message }) => message).join("; ")}`,
        );
      }
    }
  });
});

describe("braces", () => {
  it("that are missing are told at the heading of their block", () => {
    assert.deepEqual(told("wall a {\n  size 4 x 5\nbed 1/8\n"), [
      "syntax/unclosed [wall a] this block is not closed: its `}` is missing",
    ]);
    assert.deepEqual(told("wall a {\n  size 4 x 5\n"), [
      "syntax/unclosed [wall a] this block is not closed: its `}` is missing",
    ]);
  });

  it("of a heading that are missing are told at its end", () => {
    assert.deepEqual(told("wall a\n  size 4 x 5\n}\n"), [
      "syntax/unexpected [] found the end of the line, wanted `{`",
    ]);
  });

  it("that close nothing are told, and nothing is lost", () => {
    assert.deepEqual(told("bed 1/8\n}\nunits mm\n"), [
      "syntax/brace [}] found `}` without a `{` that it could close",
    ]);
  });

  it("whose heading has lost its words are told, and once for all that is in them", () => {
    assert.deepEqual(told("{\n  tube 10.1 floz\n  depth 1/4\n  price 9 a tube\n}\nbed 1/8\n"), [
      "syntax/brace [{] found `{` without a heading such as `wall back`",
    ]);
  });

  it("that follow no heading are told, and what is in them is read", () => {
    const text = "{\n  wall a {\n    size 4 x 5\n  }\n}\n";
    assert.deepEqual(told(text), [
      "syntax/brace [{] found `{` without a heading such as `wall back`",
    ]);
    assert.equal(statementsOf(text).length, 2);
  });

  it("after a statement that has no block are told, and the statement is kept", () => {
    const text = "bed 1/8 {\n  units mm\n}\n";
    assert.deepEqual(told(text), [
      "syntax/brace [{] found `{` after a statement that has no block",
    ]);
    assert.deepEqual(statementsOf(text), ["/bed bed 1/8"]);
  });

  it("that match are trusted, however badly the lines are indented", () => {
    const text =
      "wall a {\n        size 4 x 5\n    window b {\nat 1, 1\n      size 1 x 1\n  }\n  }\n   bed 1/8\n";
    assert.deepEqual(parse(text).problems, []);
    const flush = FULL.replace(/^ +/gm, "");
    assert.deepEqual(statementsOf(flush), whole);
  });
});

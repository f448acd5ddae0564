import assert from "node:assert/strict";
import { parse, resolve } from "../../../src/language/index.js";
import type { Files } from "../telling.js";
import { FILE, INCH, planOf, resolveText, STOCK, told } from "../telling.js";

const USE = 'use "stock.tileplan"\n';
const stock = (text: string): Files => ({ "plans/stock.tileplan": text });

describe("a used file", () => {
  it("brings its tiles, trims and lengths", () => {
    const files = stock(`${STOCK}\nlet sill = 46\n`);
    const text = `${USE}bed sill\nwall a {\n  size 60 x 96\n  left free trim nose\n  lay field {\n    bond stack\n    joint 1/8\n  }\n}\n`;
    assert.deepEqual(told(text, files), []);
    const plan = planOf(text, files);
    assert.equal(plan.bed, 46 * INCH);
    assert.equal(plan.walls[0]!.lays[0]!.tile.origin.file, "plans/stock.tileplan");
    assert.deepEqual([plan.tiles.length, plan.trims.length], [1, 1]);
  });

  it("has units of its own for its bare numbers", () => {
    const files = stock("units mm\nlet gap = 3\nlet twice = 2 * gap\n");
    assert.equal(planOf(`units inch\n${USE}bed twice\n`, files).bed, 6_000_000);
    assert.equal(planOf(`units inch\n${USE}bed twice + 1\n`, files).bed, 31_400_000);
    assert.equal(planOf(USE, files).units, "inch");
  });

  it("may use others, in other folders of the workspace", () => {
    const files = {
      "plans/stock.tileplan": 'use "../team/lengths.tileplan"\nlet sill = floor + 4\n',
      "team/lengths.tileplan": "let floor = 2\n",
    };
    assert.deepEqual(told(`${USE}bed sill + floor\n`, files), []);
    assert.equal(planOf(`${USE}bed sill + floor\n`, files).bed, 8 * INCH);
  });

  it("may come by two ways", () => {
    const files = {
      "plans/stock.tileplan": 'use "lengths.tileplan"\n',
      "plans/lengths.tileplan": "let floor = 2\n",
    };
    assert.deepEqual(told(`${USE}use "lengths.tileplan"\nbed floor\n`, files), []);
  });

  it("that isn't there is told, also when the host throws", () => {
    assert.deepEqual(told(USE), [
      'plan/use-missing ["stock.tileplan"] found no file `stock.tileplan`, wanted one beside this plan or in its folders',
    ]);
    const read = (): never => {
      throw new Error("no such file");
    };
    const { diagnostics } = resolve(parse(USE), { file: FILE, root: "", read });
    assert.deepEqual(
      diagnostics.map(({ code }) => code),
      ["plan/use-missing"],
    );
  });

  const outside: Record<string, RegExp> = {
    "../../stock.tileplan": /which leaves the workspace; wanted a file inside it$/,
    "/etc/stock.tileplan": /wanted a path from this file/,
    "C:/stock.tileplan": /wanted a path from this file/,
    "a\\stock.tileplan": /wanted a path from this file, with `\/` between folders$/,
    "secrets.env": /wanted a file that ends in `\.tileplan`$/,
    "": /wanted a file that ends in `\.tileplan`$/,
  };
  for (const [path, wanted] of Object.entries(outside)) {
    it(`can't be ${JSON.stringify(path)}, and nothing is read`, () => {
      const reads: string[] = [];
      const source = { file: FILE, root: "", read: (read: string) => (reads.push(read), "") };
      const { diagnostics } = resolve(parse(`use "${path}"\n`), source);
      assert.deepEqual(
        diagnostics.map(({ code }) => code),
        ["plan/use-outside"],
      );
      assert.match(diagnostics[0]!.message, wanted);
      assert.deepEqual(reads, []);
    });
  }

  it("that uses the plan, or itself, is told as a circle", () => {
    assert.deepEqual(told('use "bath.tileplan"\n', { [FILE]: "" }), [
      'plan/use-circle ["bath.tileplan"] found files that use each other: bath.tileplan uses bath.tileplan',
    ]);
    const [message] = told(USE, stock('use "bath.tileplan"\n'));
    assert.match(
      message!,
      /^plan\/use-fault \["stock.tileplan"\] found a fault in `stock.tileplan`, line 1: found files that use each other: bath.tileplan uses stock.tileplan uses bath.tileplan$/,
    );
  });

  it("in a circle of others is told, and what it says is kept", () => {
    const files = {
      "plans/stock.tileplan": 'use "b.tileplan"\nlet a = 1\n',
      "plans/b.tileplan": 'use "stock.tileplan"\nlet b = 2\n',
    };
    assert.equal(planOf(`${USE}bed a + b\n`, files).bed, 3 * INCH);
    assert.equal(told(`${USE}bed a + b\n`, files).length, 1);
  });

  it("with faults is told at its `use`, with the places of the faults", () => {
    const files = stock("let a = \nlet b = c\nlet d = 2\n");
    const { diagnostics } = resolveText(`${USE}bed d\n`, files);
    assert.equal(diagnostics.length, 1);
    const [{ message, severity, range, related }] = diagnostics as [(typeof diagnostics)[0]];
    assert.equal(
      message,
      "found 2 faults, the first in `stock.tileplan`, line 1: found the end of the line, wanted a length",
    );
    assert.deepEqual([severity, range.start.line, range.start.character], ["error", 0, 4]);
    assert.deepEqual(
      related!.map(({ file, range: place }) => [file, place.start.line]),
      [
        ["plans/stock.tileplan", 0],
        ["plans/stock.tileplan", 1],
      ],
    );
    assert.equal(planOf(`${USE}bed d\n`, files).bed, 2 * INCH);
  });

  it("with walls is told that they are left out", () => {
    const { diagnostics, plan } = resolveText(USE, stock("wall a {\n  size 4 x 5\n}\n"));
    assert.deepEqual(
      diagnostics.map(({ code, severity }) => [code, severity]),
      [["plan/use-left-out", "warning"]],
    );
    assert.deepEqual(plan.walls, []);
  });

  it("with a name that the plan has too is told, and the plan's own stands", () => {
    const text = `${USE}let a = 2\nbed a\n`;
    const { diagnostics } = resolveText(text, stock("let a = 1\n"));
    assert.deepEqual(told(text, stock("let a = 1\n")), [
      "plan/name-twice [a] found a length called `a` again, wanted another name",
    ]);
    assert.equal(diagnostics[0]!.related![0]!.file, "plans/stock.tileplan");
    assert.equal(planOf(text, stock("let a = 1\n")).bed, 2 * INCH);
  });

  it("with a name that another used file has too is told", () => {
    const files = { ...stock("let a = 1\n"), "plans/b.tileplan": "let a = 2\n" };
    assert.deepEqual(told(`${USE}use "b.tileplan"\nbed a\n`, files), [
      'plan/name-twice ["b.tileplan"] found a length called `a` again, wanted another name',
    ]);
  });

  it("may be the first of fifty in a row, but not of a thousand", () => {
    const chain = (length: number): Files =>
      Object.fromEntries(
        Array.from({ length }, (_, i) => [
          `plans/${i === 0 ? "stock" : i}.tileplan`,
          i === length - 1 ? "let a = 1\n" : `use "${i + 1}.tileplan"\n`,
        ]),
      );
    assert.equal(planOf(`${USE}bed a\n`, chain(50)).bed, INCH);
    assert.match(
      told(USE, chain(1000))[0]!,
      /found more than 50 files that use one another in a row/,
    );
  });
});

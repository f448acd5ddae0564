import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { Ajv } from "ajv";
import { gaugelath } from "./capture.js";
import { BROKEN, CLEAN } from "./plans.js";
import { commit, git, repository } from "./repository.js";
import { workplace } from "./workplace.js";

/** Two walls, one of them cut. */
const TWO = CLEAN.replace(
  "wall back",
  `wall side "Side wall" {
  size 11 x 8 5/16
  lay field {
    bond stack
    joint 1/16
  }
}
wall back`,
);

describe("gaugelath sheet", () => {
  const place = workplace({
    "clean.tileplan": CLEAN,
    "two.tileplan": TWO,
    "broken.tileplan": BROKEN,
    "metric.tileplan": CLEAN.replace("units inch", "units cm"),
    "odd.tileplan": CLEAN.replace("Back wall", "Wand 日"),
  });
  const sheet = (...words: string[]) => gaugelath(place, ["sheet", ...words]);
  const bytes = (name: string): Buffer => readFileSync(place.path(name));

  it("writes a PDF, the same each time", async () => {
    const words = ["clean.tileplan", "-o", "clean.pdf"];
    assert.deepEqual(await sheet(...words), { exit: 0, out: "", err: "" });
    const first = bytes("clean.pdf");
    assert.equal(first.toString("latin1", 0, 8), "%PDF-1.7");
    await sheet(...words);
    assert.ok(first.equals(bytes("clean.pdf")));
  });

  it("writes to standard output for -o -, by the format that is named", async () => {
    const { out } = await sheet("clean.tileplan", "-o", "-", "--format", "pdf");
    assert.ok(Buffer.from(out, "latin1").equals(bytes("clean.pdf")));
    const { exit, err } = await sheet("clean.tileplan", "-o", "-");
    assert.equal(exit, 2);
    assert.match(err, /-o - does not say which format/);
  });

  it("writes a picture of each sheet, and tells their names", async () => {
    for (const format of ["svg", "png"]) {
      const { exit, out } = await sheet("clean.tileplan", "-o", `p.${format}`, "--only", "back");
      assert.equal(exit, 0);
      const names = out.trim().split("\n");
      assert.ok(names.length > 1);
      assert.equal(names[0], `p-wall-back.${format}`);
      for (const name of names) assert.ok(bytes(name).length > 500);
    }
  });

  it("writes a drawing of each wall; of one, under the file's own name", async () => {
    const { out } = await sheet("two.tileplan", "-o", "two.dxf");
    assert.deepEqual(out.trim().split("\n"), ["two-wall-side.dxf", "two-wall-back.dxf"]);
    assert.equal((await sheet("two.tileplan", "-o", "one.dxf", "--only", "back")).out, "");
    assert.ok(bytes("one.dxf").equals(bytes("two-wall-back.dxf")));
  });

  it("writes cuts and purchases for a spreadsheet, or one of them", async () => {
    const { out } = await sheet("two.tileplan", "-o", "lists.csv");
    assert.deepEqual(out.trim().split("\n"), ["lists-cuts.csv", "lists-purchases.csv"]);
    await sheet("two.tileplan", "-o", "cuts.csv", "--only", "cuts");
    assert.ok(bytes("cuts.csv").equals(bytes("lists-cuts.csv")));
    assert.match(bytes("cuts.csv").toString(), /S-01-0/);
  });

  it("writes words and tables as Markdown", async () => {
    await sheet("two.tileplan", "-o", "two.md");
    assert.match(bytes("two.md").toString(), /^#+ Side wall$/m);
  });

  it("writes JSON that keeps to the schema that it prints", async () => {
    await sheet("two.tileplan", "-o", "two.json", "--revision", "B");
    const schema = JSON.parse((await sheet("--schema")).out) as object;
    const told = JSON.parse(bytes("two.json").toString()) as { revision: string };
    const ajv = new Ajv({ strict: false });
    const valid = ajv.compile(schema);
    assert.ok(valid(told), JSON.stringify(valid.errors));
    assert.equal(told.revision, "B");
  });

  it("prints on letter where lengths are inches, else on A4, or as it is told", async () => {
    const size = async (...words: string[]): Promise<string> => {
      await sheet(...words, "-o", "size.pdf");
      return /\/MediaBox \[0 0 ([\d.]+)/.exec(bytes("size.pdf").toString("latin1"))![1]!;
    };
    assert.equal(await size("clean.tileplan"), "612");
    assert.equal(await size("metric.tileplan"), "595.276");
    assert.equal(await size("clean.tileplan", "--paper", "A4"), "595.276");
    assert.match(
      (await sheet("clean.tileplan", "-o", "a.pdf", "--paper", "a3")).err,
      /knows letter and a4/,
    );
  });

  it("names the parts where one is asked for that is not there", async () => {
    const { exit, err } = await sheet("clean.tileplan", "-o", "a.pdf", "--only", "front");
    assert.equal(exit, 2);
    assert.match(err, /--only front: the sheet has no such part/);
    assert.match(err, /plan, wall-back, shopping-list/);
  });

  it("says which letters can't be printed", async () => {
    const { exit, err } = await sheet("odd.tileplan", "-o", "odd.pdf");
    assert.equal(exit, 0);
    assert.equal(err, "gaugelath: the print font has no letter for U+65E5; a sign stands there\n");
  });

  it("prints what could be understood, tells the rest on standard error, and ends with 1", async () => {
    const { exit, err } = await sheet("broken.tileplan", "-o", "broken.pdf");
    assert.equal(exit, 1);
    assert.match(err, /^broken\.tileplan:11:3: error: /);
    assert.ok(bytes("broken.pdf").length > 1000);
  });

  it("leaves nothing behind where it can't write, and never writes over the plan", async () => {
    const before = readdirSync(place.folder);
    const { exit, err } = await sheet("clean.tileplan", "-o", "gone/a.pdf");
    assert.equal(exit, 2);
    assert.match(err, /^gaugelath: gone\/a\.pdf could not be written: /);
    assert.deepEqual(readdirSync(place.folder), before);
    const own = await sheet("clean.tileplan", "-o", "./clean.tileplan", "--format", "md");
    assert.match(own.err, /is the plan itself/);
    assert.equal(bytes("clean.tileplan").toString(), CLEAN);
  });

  it("refuses to write several files to one stream", async () => {
    const { exit, err } = await sheet("two.tileplan", "-o", "-", "--format", "csv");
    assert.equal(exit, 2);
    assert.match(err, /-o - takes one file; the sheet makes 2/);
    const one = await sheet("two.tileplan", "-o", "-", "--format", "csv", "--only", "purchases");
    assert.equal(one.exit, 0);
  });

  it("tells how far it is where a person watches", async () => {
    const words = ["sheet", "two.tileplan", "-o", "slow/"];
    const { err } = await gaugelath(place, words, { watched: true });
    assert.match(err, /printing sheets: \d+ of \d+/);
    assert.ok(err.endsWith("\r\u001b[K"), "the line is cleared");
  });

  describe("in a repository", () => {
    const kept = repository((at) => commit(at, "First", { "a.tileplan": CLEAN }));

    it("prints the commit as the revision", async () => {
      const head = git(kept.folder, "rev-parse", "--short", "HEAD").trim();
      await gaugelath(kept, ["sheet", "a.tileplan", "-o", "a.md"]);
      assert.ok(readFileSync(kept.path("a.md"), "utf8").includes(head));
    });
  });
});

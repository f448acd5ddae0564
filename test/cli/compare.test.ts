import assert from "node:assert/strict";
import { mkdirSync, renameSync, rmSync } from "node:fs";
import { gaugelath } from "./capture.js";
import { CLEAN, FAULTY } from "./plans.js";
import { commit, git, repository } from "./repository.js";
import { workplace } from "./workplace.js";

/** The same wall with a lower ceiling: its upper course is cut. */
const LOWER = CLEAN.replace("x 8 5/16", "x 7 5/16");
/** Its lower course is on the wall, whose end is cut where the wall is narrower. */
const SET = CLEAN.replace(/\n( *)up ([^\n]+)/, "\n$1up $2\n$1set courses 1 to 1");
const NARROWER = SET.replace(/size (\d+)/, (_, across: string) => `size ${Number(across) - 1}`);
const CUT = "3 pieces along the top: whole -> 3 in high, in course 2";

describe("gaugelath compare OLD NEW", () => {
  const place = workplace({
    "old.tileplan": CLEAN,
    "new.tileplan": LOWER,
    "comment.tileplan": `# a comment\n${CLEAN}`,
    "faulty.tileplan": FAULTY,
    "set.tileplan": SET,
    "set-narrower.tileplan": NARROWER,
    "a/one.tileplan": CLEAN,
    "a/gone.tileplan": CLEAN,
    "b/one.tileplan": LOWER,
    "b/new.tileplan": CLEAN,
  });

  it("says what the change does", async () => {
    const { exit, out, err } = await gaugelath(place, ["compare", "old.tileplan", "new.tileplan"]);
    assert.deepEqual([exit, err], [0, ""]);
    assert.ok(out.startsWith("new.tileplan\nWhat moved\n"));
    assert.ok(out.includes(CUT));
    assert.ok(out.endsWith("\n1 plan compared: 1 changed\n"));
  });

  it("says that nothing changed but the text", async () => {
    const words = ["compare", "old.tileplan", "comment.tileplan"];
    const { out } = await gaugelath(place, words);
    assert.equal(
      out,
      "comment.tileplan\nNothing changed but the text.\n\n" +
        "1 plan compared: 1 with another text and the same layout\n",
    );
    assert.equal((await gaugelath(place, [...words, "--fail-on", "any"])).exit, 0);
  });

  it("compares folders plan by plan", async () => {
    const { out } = await gaugelath(place, ["compare", "a", "b"]);
    assert.ok(out.includes("\ngone.tileplan (gone)\n") || out.startsWith("gone.tileplan (gone)\n"));
    assert.ok(out.includes("new.tileplan (new)\nWhat moved\n  the wall is new: 6 pieces\n"));
    assert.ok(out.endsWith("3 plans compared: 1 changed, 1 new, 1 gone\n"));
  });

  it("ends with 1 on what --fail-on names, and on nothing else", async () => {
    const exitOf = async (before: string, after: string, what: string) =>
      (await gaugelath(place, ["compare", before, after, "--fail-on", what])).exit;
    assert.equal(await exitOf("old.tileplan", "new.tileplan", "any"), 1);
    assert.equal(await exitOf("old.tileplan", "new.tileplan", "new-findings,more-tiles"), 0);
    assert.equal(await exitOf("old.tileplan", "faulty.tileplan", "new-findings"), 1);
    assert.equal(await exitOf("faulty.tileplan", "old.tileplan", "new-findings"), 0);
    assert.equal(await exitOf("set.tileplan", "set-narrower.tileplan", "new-findings"), 1);
    assert.equal(await exitOf("set.tileplan", "set.tileplan", "new-findings"), 0);
    assert.equal(await exitOf("old.tileplan", "old.tileplan", "any"), 0);
  });

  it("writes JSON", async () => {
    const { out } = await gaugelath(place, ["compare", "a", "b", "--format", "json"]);
    const { schema, plans } = JSON.parse(out) as { schema: number; plans: { status: string }[] };
    assert.equal(schema, 1);
    assert.deepEqual(plans.map(({ status }) => status).sort(), ["changed", "gone", "new"]);
  });

  it("says what it can't read, and does the rest", async () => {
    place.write({ "b/utf16.tileplan": Uint8Array.of(0xff, 0xfe, 0x41, 0) });
    const { exit, out, err } = await gaugelath(place, ["compare", "a", "b"]);
    assert.equal(exit, 2);
    assert.match(err, /b\/utf16\.tileplan: it is UTF-16 text/);
    assert.ok(out.includes("one.tileplan\n"));
  });

  it("wants two of a kind", async () => {
    const { exit, err } = await gaugelath(place, ["compare", "a", "old.tileplan"]);
    assert.equal(exit, 2);
    assert.match(err, /one of the two is a folder/);
    assert.match((await gaugelath(place, ["compare", "old.tileplan"])).err, /found 1/);
    assert.match((await gaugelath(place, ["compare", "old.tileplan", "x"])).err, /no such file/);
  });
});

const STOCK = `units inch
tile field "4 x 4 tile" {
  face 4 x 4
  thickness 1/4
}
`;
const USING = CLEAN.replace(/tile field[\s\S]*?\n}\n/, 'use "stock.tileplan"\n');

describe("gaugelath compare --from", () => {
  const place = repository((here) => {
    commit(here, "one", { "bath.tileplan": CLEAN, "walls/Bäder 浴室/Wand 1.tileplan": CLEAN });
    commit(here, "broken", { "bath.tileplan": CLEAN.replace("wall back", "wal back {") });
    commit(here, "mended", { "bath.tileplan": LOWER });
    git(here.folder, "checkout", "-q", "-b", "side", "HEAD~2");
    commit(here, "side", { "walls/Bäder 浴室/Wand 1.tileplan": LOWER });
    git(here.folder, "checkout", "-q", "main");
    git(here.folder, "merge", "-q", "-m", "merged", "side");
    git(here.folder, "tag", "merged");
    mkdirSync(here.path("kept"));
    renameSync(here.path("bath.tileplan"), here.path("kept/upstairs bath.tileplan"));
    commit(here, "renamed", {});
    commit(here, "stock", { "stock.tileplan": STOCK, "using.tileplan": USING });
    commit(here, "a thinner tile", { "stock.tileplan": STOCK.replace("4 x 4\n", "4 x 3 7/8\n") });
  });

  async function compared(...words: readonly string[]) {
    return gaugelath(place, ["compare", ...words]);
  }

  it("compares a file with what it was", async () => {
    place.write({ "using.tileplan": USING.replace("movement 1/8", "movement 1/4") });
    const { exit, out, err } = await compared("--from", "HEAD", "using.tileplan");
    assert.deepEqual([exit, err], [0, ""]);
    assert.ok(out.includes("bottom, soft joint: 1/8 in -> 1/4 in"), out);
    git(place.folder, "checkout", "-q", "using.tileplan");
  });

  it("reads a used file at the same revision", async () => {
    const { out } = await compared("--from", "HEAD~1", "--to", "HEAD", "using.tileplan");
    assert.ok(out.includes("tile field, face: 4 in x 4 in -> 4 in x 3 7/8 in"), out);
    assert.ok((await compared("--from", "HEAD", "using.tileplan")).out.endsWith("1 unchanged\n"));
  });

  it("follows a rename, with blanks in the name", async () => {
    const { out } = await compared(
      "--from",
      "main~6",
      "--to",
      "main",
      "kept/upstairs bath.tileplan",
    );
    assert.ok(out.startsWith("kept/upstairs bath.tileplan\n"), out);
    assert.ok(out.includes(CUT), out);
  });

  it("reads names of other letters, and through a merge", async () => {
    const { out } = await compared("--from", "merged^1", "--to", "merged", ".");
    assert.ok(out.includes("walls/Bäder 浴室/Wand 1.tileplan\n"), out);
    assert.ok(out.includes(CUT));
    assert.ok(out.endsWith("2 plans compared: 1 changed, 1 unchanged\n"), out);
  });

  it("takes a plan that was broken in between as it was", async () => {
    const broken = await compared("--from", "merged~3", "--to", "merged~2", "bath.tileplan");
    assert.match(broken.out, /new: error syntax\//);
    assert.equal(broken.exit, 0);
    const mended = await compared(
      "--from",
      "merged~2",
      "--to",
      "merged~1",
      "bath.tileplan",
      "--fail-on",
      "new-findings",
    );
    assert.match(mended.out, /gone: error syntax\//);
    assert.equal(mended.exit, 0);
  });

  it("tells plans that are new or gone", async () => {
    const { out } = await compared("--from", "merged", "--to", "HEAD");
    assert.ok(out.includes("using.tileplan (new)\n"), out);
    rmSync(place.path("using.tileplan"));
    assert.ok((await compared("--from", "HEAD")).out.includes("using.tileplan (gone)\n"));
    assert.ok((await compared("--from", "HEAD", "using.tileplan")).out.includes("(gone)"));
    git(place.folder, "checkout", "-q", "using.tileplan");
  });

  it("works from a folder below the top", async () => {
    const below = { folder: place.path("kept") };
    const { out } = await gaugelath(below, [
      "compare",
      "--from",
      "main~6",
      "upstairs bath.tileplan",
    ]);
    assert.ok(out.startsWith("upstairs bath.tileplan\n"), out);
  });

  it("says that there is no such revision, or no such plan", async () => {
    const missing = await compared("--from", "gone", ".");
    assert.deepEqual([missing.exit, missing.out], [2, ""]);
    assert.match(missing.err, /there is no revision gone in this repository/);
    assert.match((await compared("--from", "--all", ".")).err, /no revision --all/);
    const plan = await compared("--from", "HEAD", "nowhere.tileplan");
    assert.match(plan.err, /nowhere\.tileplan: there is no plan of that name in either revision/);
    assert.match((await compared("--from", "HEAD", "/")).err, /outside of the repository/);
  });

  it("says that a shallow clone holds no more", async () => {
    const clone = place.path("clone");
    git(place.folder, "clone", "-q", "--depth", "1", `file://${place.folder}`, clone);
    const here = { folder: clone };
    const { exit, err } = await gaugelath(here, ["compare", "--from", "HEAD~1", "."]);
    assert.equal(exit, 2);
    assert.match(err, /revision HEAD~1 is not in this clone, which is shallow/);
    assert.match(err, /hint git fetch --unshallow/);
    rmSync(clone, { recursive: true });
  });

  it("says that there is no git, or no repository", async () => {
    const bare = await gaugelath({ folder: "/" }, ["compare", "--from", "HEAD", "."]);
    assert.match(bare.err, /is in no git repository/);
    const { PATH } = process.env;
    process.env.PATH = "";
    try {
      const { exit, err } = await compared("--from", "HEAD", ".");
      assert.equal(exit, 2);
      assert.match(err, /git could not be started: it is not installed/);
      assert.match(err, /hint without git, compare two files/);
    } finally {
      process.env.PATH = PATH;
    }
  });
});

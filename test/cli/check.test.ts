import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import type { Log } from "sarif";
import { gaugelath } from "./capture.js";
import { ALLOWED, BROKEN, CLEAN, FAULTY } from "./plans.js";
import { assertSarif } from "./sarif-schema.js";
import { workplace } from "./workplace.js";

const examples = new URL("../../examples", import.meta.url);

describe("gaugelath check", () => {
  const place = workplace({
    "clean.tileplan": CLEAN,
    "faulty.tileplan": FAULTY,
    "allowed.tileplan": ALLOWED,
    "broken.tileplan": BROKEN,
    "walls/a.tileplan": CLEAN,
    "walls/b.tileplan": FAULTY,
    "windows.tileplan": `\ufeff${FAULTY.replaceAll("\n", "\r\n")}`,
    "empty.tileplan": "",
    "latin.tileplan": Buffer.concat([Buffer.from(`${CLEAN}# caf`), Buffer.of(0xe9, 0x0a)]),
    "binary.tileplan": Buffer.of(0x7f, 0x45, 0x4c, 0x46, 0, 1, 2),
    "huge.tileplan": "#".repeat(17 * 1024 * 1024),
    "shared/stock.tileplan": `units inch\ntile field "4 x 4 tile" {\n  face 4 x\n  thickness 1/4\n}\n`,
    "shared/one.tileplan": `plan "One"\nuse "stock.tileplan"\n`,
    "shared/two.tileplan": `plan "Two"\nuse "stock.tileplan"\n`,
  });

  async function check(...words: string[]): Promise<{ exit: number; out: string; err: string }> {
    return gaugelath(place, ["check", ...words]);
  }

  it("ends with 0 where there is nothing to tell", async () => {
    const { exit, out, err } = await check("clean.tileplan");
    assert.equal(out, "1 plan checked: no errors, no warnings\n");
    assert.deepEqual([exit, err], [0, ""]);
  });

  it("shows an error as a compiler does, and ends with 1", async () => {
    const { exit, out } = await check("faulty.tileplan");
    assert.equal(
      out,
      `faulty.tileplan:17:5: error: the joint is 1/16 in; at least 3/16 in, 3 x the 1/16 in by which the tile varies, is wanted [joint/too-narrow]
 17 |     joint 1/16
    |     ^^^^^
   wall back
   source ANSI A108.02 4.3.8, quoted in tileletter.com/what-is-minimum-grout-joint

1 plan checked: 1 error, no warnings
`,
    );
    assert.equal(exit, 1);
  });

  it("shows an allowed finding with its reason, and ends with 0, strict or not", async () => {
    const { exit, out } = await check("allowed.tileplan", "--strict");
    assert.match(
      out,
      /Allowed by the plan:\n.*\[joint\/too-narrow\]\n {3}reason a dry run looked well/,
    );
    assert.match(out, /no errors, no warnings, 1 allowed\n$/);
    assert.equal(exit, 0);
  });

  it("points at a line that can't be understood", async () => {
    const { exit, out } = await check("broken.tileplan");
    assert.match(out, /^broken\.tileplan:11:3: error: /);
    assert.match(out, /\n 11 \| {3}botom counter movement 1\/8\n {4}\| {3}\^\^\^\^\^\n/);
    assert.equal(exit, 1);
  });

  it("counts a warning as an error when strict", async () => {
    place.write({
      "warned.tileplan": CLEAN.replace("movement 1/8\n  left", "movement 1/16\n  left"),
    });
    const plain = await check("warned.tileplan");
    assert.match(plain.out, /no errors, 1 warning/);
    assert.equal(plain.exit, 0);
    assert.equal((await check("warned.tileplan", "--strict")).exit, 1);
  });

  it("checks several files and folders, each once", async () => {
    const { exit, out } = await check("clean.tileplan", "walls", "walls/a.tileplan");
    assert.match(out, /^walls\/b\.tileplan:17:/);
    assert.match(out, /\n3 plans checked: 1 error, no warnings\n$/);
    assert.equal(exit, 1);
  });

  it("reads standard input for -", async () => {
    const { exit, out } = await gaugelath(place, ["check", "-"], { input: FAULTY });
    assert.match(out, /^<stdin>:17:/);
    assert.equal(exit, 1);
  });

  it("finds the same places in a file with a byte order mark and Windows line ends", async () => {
    const [unix, windows] = [await check("faulty.tileplan"), await check("windows.tileplan")];
    assert.equal(windows.out, unix.out.replaceAll("faulty", "windows"));
  });

  it("checks an empty plan", async () => {
    const { exit, err } = await check("empty.tileplan");
    assert.equal(err, "");
    assert.ok(exit === 0 || exit === 1);
  });

  it("tells a byte that is no UTF-8 and still checks the rest", async () => {
    const { exit, out } = await check("latin.tileplan");
    assert.match(out, /^latin\.tileplan:22:6: error: the byte 0xE9 is no UTF-8 text/);
    assert.match(out, /1 error, no warnings\n$/);
    assert.equal(exit, 1);
  });

  it("ends with 2 for what can't be read, and still checks the others", async () => {
    const { exit, out, err } = await check(
      ...["gone.tileplan", "binary.tileplan", "huge.tileplan", "faulty.tileplan"],
    );
    assert.equal(
      err,
      `gaugelath: gone.tileplan: there is no such file or folder
gaugelath: binary.tileplan: it is not a text (it holds zero bytes)
gaugelath: huge.tileplan: it is too large for a plan
   hint the limit is 16 MB
`,
    );
    assert.match(out, /\n1 plan checked: 1 error, no warnings\n$/);
    assert.equal(exit, 2);
  });

  it("tells a fault of a shared stock list once, at its place there", async () => {
    const { out } = await check("shared");
    assert.equal(out.match(/^shared\/stock\.tileplan:3:.*error/gm)?.length, 1, out);
  });

  it("gives findings as JSON, places counted from zero", async () => {
    const { exit, out } = await check("faulty.tileplan", "allowed.tileplan", "--format", "json");
    const log = JSON.parse(out) as {
      files: string[];
      diagnostics: { code: string; file: string; range: object; allowed?: string }[];
    };
    assert.deepEqual(log.files, ["faulty.tileplan", "allowed.tileplan"]);
    const found = log.diagnostics.map(({ code, file, allowed }) => ({ code, file, allowed }));
    assert.deepEqual(found, [
      { code: "joint/too-narrow", file: "faulty.tileplan", allowed: undefined },
      { code: "joint/too-narrow", file: "allowed.tileplan", allowed: "a dry run looked well" },
    ]);
    assert.equal(exit, 1);
  });

  it("gives findings as SARIF", async () => {
    const { exit, out } = await check("faulty.tileplan", "--format", "sarif");
    const log = JSON.parse(out) as Log;
    assertSarif(log);
    const [result] = log.runs[0]!.results!;
    assert.equal(result!.ruleId, "joint/too-narrow");
    assert.equal(result!.locations![0]!.physicalLocation!.region!.startLine, 17);
    assert.equal(exit, 1);
  });

  it("gives valid SARIF for every kind of finding", async () => {
    const { out } = await check(".", fileURLToPath(examples), "--format", "sarif");
    assertSarif(JSON.parse(out));
  });

  it("colours its report only where colours are on", async () => {
    const plain = await gaugelath(place, ["check", "faulty.tileplan"]);
    const coloured = await gaugelath(place, ["check", "faulty.tileplan"], { colours: true });
    assert.ok(!plain.out.includes("\u001b"));
    assert.ok(coloured.out.includes("\u001b[1;31merror\u001b[0m"));
  });
});

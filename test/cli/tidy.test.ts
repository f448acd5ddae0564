import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { gaugelath } from "./capture.js";
import { Workplace } from "./workplace.js";

const UNTIDY = "units   mm\nbed 4   # mortar\n";
const TIDY = "units mm\nbed 4                                     # mortar\n";

describe("gaugelath tidy", () => {
  let place: Workplace;
  beforeEach(() => {
    place = new Workplace();
    place.write({ "a.tileplan": UNTIDY, "walls/b.tileplan": TIDY });
  });
  afterEach(() => place.remove());
  const textOf = (name: string): string => readFileSync(place.path(name), "utf8");

  it("tidies files and folders, and says which", async () => {
    const { exit, out } = await gaugelath(place, ["tidy", "."]);
    assert.equal(exit, 0);
    assert.equal(out, "a.tileplan: tidied\n2 plans, 1 tidied\n");
    assert.equal(textOf("a.tileplan"), TIDY);
    assert.deepEqual(readdirSync(place.folder).sort(), ["a.tileplan", "walls"]);
  });

  it("writes nothing with --check, and ends with 1 where a plan is untidy", async () => {
    const { exit, out } = await gaugelath(place, ["tidy", ".", "--check"]);
    assert.equal(exit, 1);
    assert.equal(out, "a.tileplan: would be tidied\n2 plans, 1 would be tidied\n");
    assert.equal(textOf("a.tileplan"), UNTIDY);
    assert.equal((await gaugelath(place, ["tidy", "walls", "--check"])).exit, 0);
  });

  it("tidies standard input to standard output", async () => {
    const { exit, out } = await gaugelath(place, ["tidy", "-"], { input: UNTIDY });
    assert.deepEqual([exit, out], [0, TIDY]);
    assert.equal((await gaugelath(place, ["tidy", "-", "--check"], { input: UNTIDY })).exit, 1);
  });

  it("leaves a file that is no text as it is, and tidies the others", async () => {
    place.write({ "c.tileplan": Buffer.from([0x62, 0xff, 0x20, 0x20]) });
    const { exit, err } = await gaugelath(place, ["tidy", "."]);
    assert.equal(exit, 2);
    assert.match(err, /c\.tileplan: .*UTF-8/);
    assert.deepEqual([...readFileSync(place.path("c.tileplan"))], [0x62, 0xff, 0x20, 0x20]);
    assert.equal(textOf("a.tileplan"), TIDY);
  });

  it("wants a plan", async () => {
    const { exit, err } = await gaugelath(place, ["tidy"]);
    assert.equal(exit, 2);
    assert.match(err, /a plan to tidy/);
  });
});

import assert from "node:assert/strict";
import { checkAlone } from "../../src/cli/check-alone.js";
import type { Host } from "../../src/cli/host.js";
import { CLEAN, FAULTY } from "./plans.js";
import { workplace } from "./workplace.js";

describe("a check that is a program of its own", () => {
  const place = workplace({ "clean.tileplan": CLEAN, "faulty.tileplan": FAULTY });

  async function told(...words: string[]): Promise<{ exit: number; out: string; err: string }> {
    const said = { out: "", err: "" };
    const host: Host = {
      folder: place.folder,
      colours: { out: false, err: false },
      readStandardInput: () => Promise.resolve(new Uint8Array()),
      out: (chunks) => {
        for (const chunk of chunks) said.out += chunk.toString();
        return Promise.resolve();
      },
      err: (text) => void (said.err += text),
      watched: false,
      worker: null,
      assets: place.folder,
    };
    return { exit: await checkAlone(words, host), ...said };
  }

  it("checks as the command line does", async () => {
    const { exit, out } = await told("check", ".");
    assert.equal(exit, 1);
    assert.match(out, /faulty\.tileplan:17:/);
    assert.match(out, /2 plans checked/);
  });

  it("says what it can't read", async () => {
    assert.equal((await told("check", "gone.tileplan")).exit, 2);
    assert.match((await told("check", "--nope")).err, /no option --nope/);
  });

  it("does nothing else", async () => {
    const { exit, out, err } = await told("solve", "clean.tileplan");
    assert.deepEqual([exit, out], [2, ""]);
    assert.match(err, /nothing but check/);
  });
});

import assert from "node:assert/strict";
import { Failure } from "../../src/cli/failure.js";
import { sayFailure } from "../../src/cli/failure-text.js";
import type { Host } from "../../src/cli/host.js";

function said(failure: Failure, err = false): string {
  let text = "";
  const host: Host = {
    folder: "/",
    colours: { out: false, err },
    readStandardInput: () => Promise.resolve(new Uint8Array()),
    out: () => Promise.resolve(),
    err: (part) => void (text += part),
    watched: false,
    worker: null,
    assets: "",
  };
  sayFailure(failure, host);
  return text;
}

describe("sayFailure", () => {
  it("names the program, the reason and, where there is one, the hint", () => {
    assert.equal(said(new Failure("a: it is a folder")), "gaugelath: a: it is a folder\n");
    assert.equal(said(new Failure("no", "do so")), "gaugelath: no\n   hint do so\n");
  });

  it("lets no file's name drive the terminal", () => {
    assert.equal(said(new Failure("\u001b[2J.tileplan: gone")), "gaugelath: ␛[2J.tileplan: gone\n");
  });

  it("is coloured where standard error is", () => {
    assert.ok(said(new Failure("no"), true).startsWith("\u001b[1;31mgaugelath"));
  });
});

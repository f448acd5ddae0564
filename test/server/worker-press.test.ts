import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { fileURLToPath } from "node:url";
import vm from "node:vm";
import { workerPress } from "../../src/server/worker-press.js";

const dist = fileURLToPath(new URL("../../dist", import.meta.url));

describe("what prints, fetched by a worker", () => {
  let server: Server;
  let script = "";
  before((done) => {
    server = createServer(({ url }, answer) => {
      try {
        answer.end(readFileSync(path.join(dist, url!.replace("/dist", ""))));
      } catch {
        answer.writeHead(404).end();
      }
    }).listen(0, "127.0.0.1", () => {
      script = `http://127.0.0.1:${(server.address() as AddressInfo).port}/dist/server.js`;
      done();
    });
  });
  after(() => server.close());

  /** A worker's way to load a script: here its text is run where the test runs. */
  const scope = {
    importScripts: (address: string) => {
      assert.equal(address, script.replace("server.js", "print.js"));
      vm.runInThisContext(readFileSync(path.join(dist, "print.js"), "utf8"));
    },
  } as unknown as WorkerGlobalScope;

  it("is the bundle beside its script, and the print font", async () => {
    const { print, fonts } = await workerPress(scope, script);
    assert.ok(new print.Faces(fonts).widthOf("tile", 10) > 0);
  });

  it("says so where the font is missing", async () => {
    const elsewhere = script.replace("/dist/", "/none/");
    await assert.rejects(workerPress(scope, elsewhere), /print font could not be loaded: 404/);
  });
});

import assert from "node:assert/strict";
import { DEFAULT_SETTINGS } from "../../src/server/protocol.js";
import { readSettings, Settings } from "../../src/server/settings.js";
import { connectionInProcess } from "./in-process.js";

describe("settings from a client", () => {
  it("are taken as far as they are what they should be", () => {
    const told = { units: "mm", hints: false, changes: false, debounce: 0 };
    assert.deepEqual(readSettings(told), told);
    for (const odd of [
      null,
      undefined,
      3,
      "x",
      [],
      { units: "cubit", hints: 1, changes: 0, debounce: -1 },
    ]) {
      assert.deepEqual(readSettings(odd), DEFAULT_SETTINGS);
    }
    assert.equal(readSettings({ debounce: 1e9 }).debounce, 2000);
    assert.equal(readSettings({ debounce: NaN }).debounce, DEFAULT_SETTINGS.debounce);
  });
});

describe("the settings of a client", () => {
  /** The settings of a client that tells these, and what it was asked. */
  function telling(answer: () => unknown, canAsk = true) {
    const { server, client } = connectionInProcess();
    const asked: string[] = [];
    client.onRequest(
      "workspace/configuration",
      ({ items }: { items: { scopeUri: string; section: string }[] }) =>
        items.map(({ scopeUri, section }) => {
          asked.push(`${section} of ${scopeUri}`);
          return answer();
        }),
    );
    server.listen();
    return { settings: new Settings(server, () => canAsk), asked };
  }

  it("are asked for once a document, and again once they are forgotten", async () => {
    let units = "mm";
    const { settings, asked } = telling(() => ({ units }));
    for (const uri of ["a:/1", "a:/1", "a:/2"]) assert.equal((await settings.of(uri)).units, "mm");
    assert.deepEqual(asked, ["gaugelath of a:/1", "gaugelath of a:/2"]);
    units = "inch";
    settings.forget("a:/1");
    assert.equal((await settings.of("a:/1")).units, "inch");
    assert.equal((await settings.of("a:/2")).units, "mm");
    settings.forget();
    assert.equal((await settings.of("a:/2")).units, "inch");
  });

  it("are the defaults where it fails to tell them, or can't be asked", async () => {
    const failing = telling(() => {
      throw new Error("no settings");
    });
    assert.deepEqual(await failing.settings.of("a:/1"), DEFAULT_SETTINGS);
    assert.equal(failing.asked.length, 1);
    const silent = telling(() => ({ units: "mm" }), false);
    assert.deepEqual(await silent.settings.of("a:/1"), DEFAULT_SETTINGS);
    assert.deepEqual(silent.asked, []);
  });
});

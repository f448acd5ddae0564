import assert from "node:assert/strict";
import { DEFAULT_SETTINGS, SETTINGS_SECTION } from "../../src/server/protocol.js";
import manifest from "../../package.json" with { type: "json" };

describe("the server's settings", () => {
  it("are those of the extension, with the same defaults", () => {
    const properties = manifest.contributes.configuration.properties as Readonly<
      Record<string, { readonly default: unknown }>
    >;
    for (const [name, value] of Object.entries(DEFAULT_SETTINGS)) {
      assert.deepEqual(properties[`${SETTINGS_SECTION}.${name}`]?.default, value, name);
    }
  });
});

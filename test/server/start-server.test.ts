import assert from "node:assert/strict";
import type { InitializeResult } from "vscode-languageserver/node";
import { FEATURES } from "../../src/server/features.js";
import { clientInProcess } from "./in-process.js";

describe("the server's start", () => {
  it("takes a client that says nothing of itself, and tells all that it can do", async () => {
    const client = clientInProcess();
    const { capabilities } = await client.sendRequest<InitializeResult>("initialize", {
      processId: null,
      capabilities: {},
    });
    for (const feature of Object.keys(FEATURES)) assert.ok(feature in capabilities, feature);
    await client.sendNotification("initialized", {});
    client.dispose();
  });

  it("takes options of any shape", async () => {
    for (const initializationOptions of [null, 3, [], { files: "yes" }, { other: 1 }]) {
      const client = clientInProcess();
      const params = { processId: null, capabilities: {}, rootUri: null, initializationOptions };
      await client.sendRequest("initialize", params);
      client.dispose();
    }
  });
});

import assert from "node:assert/strict";
import type { CodeLens } from "vscode-languageserver/node";
import { ComparingClient, lastCommit, URI, wallOf } from "./comparing.js";

describe("lenses over changed walls", () => {
  let client: ComparingClient;
  beforeEach(async () => {
    client = new ComparingClient();
    await client.start();
    await client.open(URI, wallOf(40));
  });
  afterEach(() => client.connection.dispose());

  const lenses = (): Promise<CodeLens[]> =>
    client.connection.sendRequest("textDocument/codeLens", { textDocument: { uri: URI } });
  const commit = (text: string | null): Promise<void> => {
    const old = text === null ? null : lastCommit(text);
    return client.connection.sendNotification("gaugelath/lastCommit", { uri: URI, old });
  };

  it("are none before the client tells of a commit", async () => {
    assert.deepEqual(await lenses(), []);
  });

  it("show the comparison at their wall", async () => {
    await commit(wallOf(44));
    const [lens, ...others] = await lenses();
    assert.equal(others.length, 0);
    assert.match(lens!.command!.title, /gone|changed/);
    assert.equal(lens!.command!.command, "gaugelath.showChanges");
    assert.deepEqual(lens!.command!.arguments, [URI, "back"]);
    assert.equal(lens!.range.start.line, 2);
  });

  it("go once the commit holds the text as it is, and the client is told to ask again", async () => {
    await commit(wallOf(44));
    await client.until(() => client.refreshed === 1);
    await commit(wallOf(40));
    await client.until(() => client.refreshed === 2);
    assert.deepEqual(await lenses(), []);
    await commit(null);
    assert.deepEqual(await lenses(), []);
  });

  it("can be switched off", async () => {
    await commit(wallOf(44));
    assert.equal((await lenses()).length, 1);
    client.changesSetting = false;
    await client.connection.sendNotification("workspace/didChangeConfiguration", {
      settings: null,
    });
    assert.deepEqual(await lenses(), []);
  });
});

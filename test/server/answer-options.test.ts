import assert from "node:assert/strict";
import { CancellationTokenSource } from "vscode-languageserver/node";
import type { OptionsAnswer } from "../../src/server/protocol.js";
import { ComparingClient, stockOf, STOCK_URI, URI, wallOf } from "./comparing.js";

describe("layouts that clients ask for", () => {
  let client: ComparingClient;
  beforeEach(async () => {
    client = new ComparingClient();
    await client.start();
    await client.open(STOCK_URI, stockOf());
    await client.open(URI, wallOf(40));
  });
  afterEach(() => client.connection.dispose());

  const options = (uri = URI, wall: string | null = null): Promise<OptionsAnswer> =>
    client.connection.sendRequest("gaugelath/options", { uri, wall });

  it("are of the newest text, with what writes each", async () => {
    assert.equal((await options())!.version, 1);
    const version = await client.change(URI, wallOf(41));
    const answer = await options();
    assert.equal(answer!.version, version);
    const [group] = answer!.groups;
    assert.equal(group!.title, "Back wall");
    assert.ok(group!.options.filter(({ edits }) => edits.length > 0).length > 0);
  });

  it("are none of a plan that isn't open, and of a wall that it lacks", async () => {
    assert.equal(await options("file:///plans/none.tileplan"), null);
    assert.deepEqual((await options(URI, "none"))!.groups, []);
  });

  it("are not worked out when they are called off", async () => {
    const walls = Array.from({ length: 6 }, (_, i) =>
      wallOf(40 + i)
        .replace("wall back", `wall w${i}`)
        .replace(/units.*\nuse.*\n/, ""),
    );
    await client.change(URI, `units inch\nuse "stock.tileplan"\n${walls.join("")}`);
    const source = new CancellationTokenSource();
    const asked = client.connection.sendRequest<OptionsAnswer>(
      "gaugelath/options",
      { uri: URI, wall: null },
      source.token,
    );
    source.cancel();
    // Called off, an answer is none, or the request is refused as cancelled.
    const answer = await asked.catch((error: unknown) => {
      assert.match(String(error), /cancel/i);
      return null;
    });
    assert.equal(answer, null);
    assert.equal((await options())!.groups.length, 6);
  });
});

import assert from "node:assert/strict";
import { ComparingClient, lastCommit, STOCK_URI, stockOf, URI, wallOf } from "./comparing.js";

const LOOK = { way: "overlay", wall: null } as const;

describe("what is told of changes", () => {
  let client: ComparingClient;
  beforeEach(async () => {
    client = new ComparingClient();
    await client.start();
    await client.open(URI, wallOf(40));
  });
  afterEach(() => client.connection.dispose());

  const send = (method: string, params: object): Promise<void> =>
    client.connection.sendNotification(`gaugelath/${method}`, params);
  const watch = (old: object | null, id = 1): Promise<void> =>
    send("watchComparison", { id, uri: URI, old, look: LOOK });

  it("is a comparison at once and after every change, against the files of the revision", async () => {
    await watch(lastCommit(wallOf(40)));
    const same = await client.until(() => client.comparisons.at(-1));
    assert.equal(same.comparison.headline, "nothing changed but the text");
    const version = await client.change(URI, wallOf(44));
    const told = await client.until(() =>
      client.comparisons.find(({ comparison }) => comparison.version === version),
    );
    assert.match(told.comparison.headline, /new|cut differently/);
    assert.equal(told.comparison.picture?.way, "overlay");
    assert.deepEqual(client.askedOld, [STOCK_URI]);
  });

  it("is told when a used file changes, too", async () => {
    await watch(lastCommit(wallOf(40)));
    await client.until(() => client.comparisons.length > 0);
    await client.change(STOCK_URI, stockOf(6));
    await client.until(() =>
      client.comparisons.some(({ comparison }) => comparison.walls.length > 0),
    );
  });

  it("is no longer told once it is not watched", async () => {
    await watch(lastCommit(wallOf(40)));
    await watch(lastCommit(wallOf(40)), 2);
    await client.until(() => client.comparisons.some(({ id }) => id === 2));
    await watch(null);
    const version = await client.change(URI, wallOf(44));
    await client.until(() =>
      client.comparisons.some(({ comparison }) => comparison.version === version),
    );
    const late = client.comparisons.filter(({ comparison }) => comparison.version === version);
    assert.deepEqual(
      late.map(({ id }) => id),
      [2],
    );
  });

  it("follows another plan as it is edited", async () => {
    const other = "file:///plans/other.tileplan";
    await client.open(other, wallOf(40));
    await watch({ uri: other, text: null, revision: null });
    await client.until(() => client.comparisons.length > 0);
    await client.change(other, wallOf(44));
    await client.until(() =>
      client.comparisons.some(({ comparison }) => comparison.walls.length > 0),
    );
  });

  it("is the changed pieces behind each picture, while they are wanted", async () => {
    const marks = lastCommit(wallOf(40));
    await send("watchPicture", { uri: URI, watching: true, marks });
    await client.until(() => client.changes.length > 0);
    assert.deepEqual(client.changes[0]!.walls, []);
    const version = await client.change(URI, wallOf(44));
    const told = await client.until(() => client.changes.find((each) => each.version === version));
    assert.ok(told.walls[0]!.fresh.length + told.walls[0]!.recut.length > 0);
    await send("watchPicture", { uri: URI, watching: true, marks: null });
    await watch(lastCommit(wallOf(40)));
    await client.change(URI, wallOf(48));
    const last = await client.change(URI, wallOf(52));
    await client.until(() =>
      client.comparisons.some(({ comparison }) => comparison.version === last),
    );
    assert.ok(client.changes.every((each) => each.version <= version));
  });
});

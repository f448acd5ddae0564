import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { changesOf, MOVED, SINCE } from "./support/show-comparison.js";
import { paint, showPlan, TWO_WALLS, twoWalls, URI } from "./support/show-plan.js";

const NARROWER = MOVED.replace("size 36 x 48", "size 30 x 48");

describe("marks on changed pieces", function () {
  needsBrowser(this);
  let preview: OpenPreview;

  beforeEach(async () => {
    preview = await showPlan();
    await paint(preview, twoWalls(2, NARROWER));
  });

  afterEach(async () => {
    assert.deepEqual(preview.complaints, []);
    await preview.close();
  });

  const tell = async (after: string | null): Promise<void> => {
    const told = after === null ? null : { changes: changesOf(TWO_WALLS, after, 2), since: SINCE };
    await preview.post({ type: "changes", uri: URI, told });
    await preview.page.waitForTimeout(20);
  };
  const count = (selector: string): Promise<number> =>
    preview.page.locator(`.stage .changes ${selector}`).count();

  it("are told apart by line and by sign: cut differently, new, gone", async () => {
    await tell(NARROWER);
    const { walls } = changesOf(TWO_WALLS, NARROWER, 2);
    const side = walls.find(({ wall }) => wall === "side")!;
    const subpaths = (fate: string) =>
      preview.page
        .locator(`.stage .changes > g:last-child .change-${fate}`)
        .evaluate((path) => path.getAttribute("d")!.split("M").length - 1);
    assert.equal(await subpaths("recut"), side.recut.length);
    assert.equal(await subpaths("gone"), 3 * side.gone.length, "each with a cross");
    const dash = await preview.page
      .locator(".stage .change-gone")
      .first()
      .evaluate((path) => getComputedStyle(path).strokeDasharray);
    assert.notEqual(dash, "none");
  });

  it("stand on their walls, also once those moved in the picture", async () => {
    await tell(NARROWER);
    const at = () =>
      preview.page
        .locator(".stage .changes > g")
        .evaluateAll((all) => all.map((g) => g.getAttribute("transform")));
    const expected = (text: string) =>
      twoWalls(2, text).scene.walls.map((wall) => `translate(${wall.at.x} ${wall.at.y})`);
    assert.deepEqual(await at(), expected(NARROWER));
    const wider = NARROWER.replace("size 60 x 48", "size 66 x 48");
    await paint(preview, twoWalls(3, wider));
    assert.deepEqual(await at(), expected(wider));
    assert.notDeepEqual(expected(wider), expected(NARROWER));
  });

  it("are not seen on a wall that is not in the picture", async () => {
    await tell(NARROWER);
    const alone = TWO_WALLS.slice(0, TWO_WALLS.indexOf("wall side"));
    await paint(preview, twoWalls(3, alone.replace("left corner side under", "left wall")));
    assert.equal(await preview.page.locator(".stage .changes > g:visible").count(), 1);
  });

  it("go when nothing is told, and when another plan is shown", async () => {
    await tell(NARROWER);
    assert.ok((await count("path")) > 0);
    await tell(null);
    assert.equal(await count("path"), 0);
    await tell(NARROWER);
    const other = {
      type: "plan",
      uri: "file:///other",
      name: "o",
      pinned: false,
      marked: true,
    } as const;
    await preview.post(other);
    await preview.page.waitForTimeout(20);
    assert.equal(await count("path"), 0);
  });

  it("can be switched off, and the extension is told", async () => {
    await tell(NARROWER);
    const past = preview.sent().length;
    await preview.page.getByRole("button", { name: "Changes", exact: true }).click();
    assert.equal((await preview.waitFor("mark", past)).marked, false);
    assert.equal(await count("path"), 0);
    await preview.page.getByRole("button", { name: "Changes", exact: true }).click();
    const again = preview
      .sent()
      .slice(past)
      .filter(({ type }) => type === "mark");
    assert.deepEqual(again.at(-1), { type: "mark", marked: true });
  });
});

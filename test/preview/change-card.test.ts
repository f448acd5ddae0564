import assert from "node:assert/strict";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { changesOf, MOVED, SINCE } from "./support/show-comparison.js";
import { paint, showPlan, TWO_WALLS, twoWalls, URI } from "./support/show-plan.js";

describe("the card of changes", function () {
  needsBrowser(this);
  let preview: OpenPreview;

  beforeEach(async () => {
    preview = await showPlan();
    await paint(preview, twoWalls(2, MOVED));
  });

  afterEach(() => preview.close());

  const tell = async (after: string): Promise<void> => {
    const told = { changes: changesOf(TWO_WALLS, after, 2), since: SINCE };
    await preview.post({ type: "changes", uri: URI, told });
    await preview.page.waitForTimeout(20);
  };

  it("says what changed and since when, with the key to the marks that are there", async () => {
    await tell(MOVED);
    const words = await preview.page.locator(".change-card p").innerText();
    assert.match(
      words,
      /^Since the last commit, 1a2b3c4 "Centre the window": \d+ pieces cut differently/,
    );
    const { walls } = changesOf(TWO_WALLS, MOVED, 2);
    const occurs = (["recut", "fresh", "gone"] as const).filter((fate) =>
      walls.some((wall) => wall[fate].length > 0),
    );
    assert.equal(await preview.page.locator(".change-key li").count(), occurs.length);
  });

  it("is not there where nothing changed but the text", async () => {
    await tell(MOVED);
    await tell(`# a note\n${TWO_WALLS}`);
    assert.equal(await preview.page.locator(".change-card").isVisible(), false);
  });

  it("asks for the whole comparison, also though it lies on the picture", async () => {
    await tell(MOVED);
    const past = preview.sent().length;
    await preview.page.getByRole("button", { name: "Compare" }).click();
    await preview.waitFor("compare", past);
    assert.equal(
      preview
        .sent()
        .slice(past)
        .some(({ type }) => type === "select"),
      false,
    );
  });
});

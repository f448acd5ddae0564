import assert from "node:assert/strict";
import type { KeptView } from "../../src/preview/kept-view.js";
import { KeptViews, type Standing } from "../../src/preview/kept-views.js";
import type { PreviewState } from "../../src/preview/messages.js";

const VIEW: KeptView = { from: null, x: 1, y: 2, scale: 3, hold: "free", wall: null, off: [] };

describe("the views that a preview keeps", () => {
  function begin(standing: Standing | null, recalled: PreviewState | null = null) {
    const kept: PreviewState[] = [];
    const host = { keep: (state: PreviewState) => kept.push(state), recall: () => recalled };
    const now = { standing };
    return { kept, now, views: new KeptViews(host, () => now.standing) };
  }

  const standing: Standing = { uri: "a", pinned: true, marked: false, room: false, view: VIEW };

  it("are one a plan: each is seen as it was left", () => {
    const { views, now } = begin(standing);
    views.now();
    now.standing = { ...standing, uri: "b", view: { ...VIEW, x: 7 } };
    views.now();
    assert.deepEqual([views.of("a")?.x, views.of("b")?.x, views.of("c")], [1, 7, null]);
  });

  it("are given to the editor with how the preview stands", () => {
    const { views, kept } = begin(standing);
    views.now();
    assert.deepEqual(kept, [standing]);
  });

  it("stay what they were while nothing is seen", () => {
    const { views, kept, now } = begin(standing);
    views.now();
    now.standing = { ...standing, pinned: false, view: null };
    views.now();
    assert.deepEqual(kept.at(-1), { ...standing, pinned: false });
  });

  it("are none before a plan is shown, or of one that was never seen", () => {
    const { views, kept, now } = begin(null);
    views.now();
    assert.deepEqual(kept, []);
    now.standing = { ...standing, view: null };
    views.now();
    assert.deepEqual(kept, [{ uri: "a", pinned: true, marked: false, room: false }]);
  });

  it("are kept once, after a rest", async () => {
    const { views, kept } = begin(standing);
    views.soon();
    views.soon();
    assert.deepEqual(kept, []);
    await new Promise((resolve) => setTimeout(resolve, 250));
    assert.equal(kept.length, 1);
  });

  it("are recalled where what was kept is one", () => {
    const state = { uri: "a", pinned: true, view: VIEW };
    const { views } = begin(null, state);
    assert.equal(views.recall(), state);
    assert.deepEqual(views.of("a"), VIEW);
    const other = begin(null, { uri: "a", pinned: true, view: "nonsense" }).views;
    assert.equal(other.recall(), null);
    assert.equal(other.of("a"), null);
  });
});

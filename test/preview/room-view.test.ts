import assert from "node:assert/strict";
import { RoomView } from "../../src/preview/room-view.js";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { paint, pixelOf, showPlan, TWO_WALLS, twoWalls, URI } from "./support/show-plan.js";
import { roomPictureOf } from "./support/plan-options.js";

describe("which scene is seen", () => {
  it("is the plan's own unless the room is shown, and there is one", () => {
    const view = new RoomView();
    const [flat, unfolded] = [twoWalls(1), roomPictureOf(TWO_WALLS)];
    assert.equal(view.seen(unfolded), unfolded);
    view.isOn = true;
    assert.equal(view.seen(flat), flat);
    const seen = view.seen(unfolded);
    assert.equal(seen.scene, unfolded.room);
    assert.equal(view.seen(unfolded), seen, "one picture is drawn once");
  });
});

describe("the room unfolded in the preview", function () {
  needsBrowser(this);
  let preview: OpenPreview;
  const picture = roomPictureOf(TWO_WALLS);
  const place = {
    uri: URI,
    range: { start: { line: 7, character: 2 }, end: { line: 7, character: 9 } },
  };

  before(async () => {
    preview = await showPlan(
      {
        reading: ({ wall }) => ({
          title: `A piece of ${wall}`,
          facts: [],
          outline: [],
          piece: `${wall}/1/1`,
          place,
        }),
      },
      twoWalls(1),
    );
  });

  after(() => preview.close());

  const button = () => preview.page.getByRole("button", { name: "Room", exact: true });
  const titles = () => preview.page.locator(".picture text").allTextContents();

  it("is asked for when its switch is pressed, and drawn when it comes", async () => {
    assert.equal(await button().getAttribute("aria-pressed"), "false");
    await button().click();
    assert.deepEqual(await preview.waitFor("room"), { type: "room", shown: true });
    await paint(preview, picture);
    assert.ok((await titles()).some((text) => text.endsWith("the room unfolded")));
    assert.ok((await titles()).includes("inside corner"));
  });

  it("is read and goes to the text as the walls do", async () => {
    const wall = picture.room!.walls.find(({ name }) => name === "side")!;
    const [x, y] = await pixelOf(preview, wall.at.x + 60, wall.at.y - 40);
    await preview.page.mouse.click(x, y);
    await preview.page.getByText("A piece of side").waitFor();
    assert.deepEqual((await preview.waitFor("select")).range, place.range);
  });

  it("stays when the next picture comes, and gives way to the walls at once", async () => {
    await paint(preview, roomPictureOf(TWO_WALLS.replace("sash {", "light {"), 2));
    assert.ok((await titles()).some((text) => text.endsWith("the room unfolded")));
    await button().click();
    assert.ok((await titles()).every((text) => !text.endsWith("the room unfolded")));
    assert.equal(preview.sent().filter(({ type }) => type === "room").length, 2);
  });

  it("is not offered where no corner joins walls", async () => {
    await paint(preview, { ...twoWalls(3), unfolds: false });
    assert.equal(await button().count(), 0);
  });

  it("is shown again after a reload of the page", async () => {
    await paint(preview, roomPictureOf(TWO_WALLS, 4));
    await button().click();
    await preview.page.waitForTimeout(300);
    const past = preview.sent().length;
    await preview.page.reload();
    await preview.waitFor("ready", past);
    assert.deepEqual(await preview.waitFor("room", past), { type: "room", shown: true });
    await paint(preview, roomPictureOf(TWO_WALLS, 4));
    assert.ok((await titles()).some((text) => text.endsWith("the room unfolded")));
    assert.deepEqual(preview.complaints, []);
  });
});

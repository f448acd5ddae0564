import assert from "node:assert/strict";
import { spokenReading } from "../../src/preview/reading-card.js";
import type { SpotReading } from "../../src/service/index.js";
import { exampleSource, exampleText } from "../support/examples.js";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { planPicture } from "./support/plan-picture.js";
import { pixelOf, showPlan } from "./support/show-plan.js";

const READING: SpotReading = {
  title: "Course 3, piece 1",
  facts: [
    ["size", "5 1/4 x 2 7/8 in"],
    ["cut", "end cut"],
  ],
  outline: [],
  piece: null,
  place: { uri: "f", range: { start: { line: 0, character: 0 }, end: { line: 0, character: 4 } } },
};

describe("the card with what is pointed at", function () {
  needsBrowser(this);
  const name = "faults.tileplan";
  const picture = planPicture(exampleText(name), exampleSource(name), 1, "f");
  const wall = picture.scene.walls[0]!;
  let preview: OpenPreview;

  before(async () => {
    preview = await showPlan({ reading: () => READING }, picture);
  });

  after(() => preview.close());

  const card = () => preview.page.locator(".reading");

  it("shows a piece's title and its figures, and goes when the pointer does", async () => {
    const [x, y] = await pixelOf(preview, wall.at.x + 300, wall.at.y - 900);
    await preview.page.mouse.move(x, y);
    await card().getByText("Course 3, piece 1").waitFor();
    assert.deepEqual(await card().locator("dt, dd").allInnerTexts(), READING.facts.flat());
    await preview.page.mouse.move(5, 5);
    assert.equal(await card().isVisible(), false);
  });

  it("shows a finding at its badge", async () => {
    const badge = wall.badges[0]!;
    const { x, y } = badge.middle;
    await preview.page.mouse.move(...(await pixelOf(preview, wall.at.x + x, wall.at.y + y)));
    const finding = picture.findings.find((each) => each.number === badge.number)!;
    assert.ok((await card().innerText()).includes(finding.message));
  });

  it("stands out of the pointer's way", async () => {
    const stage = (await preview.page.locator(".stage").boundingBox())!;
    await preview.page.mouse.move(stage.x + 30, stage.y + stage.height - 30);
    assert.equal(await card().evaluate((each) => each.classList.contains("aside")), true);
    await preview.page.mouse.move(stage.x + stage.width - 30, stage.y + stage.height - 30);
    assert.equal(await card().evaluate((each) => each.classList.contains("aside")), false);
  });
});

describe("a reading as it is spoken", () => {
  it("is one sentence of its facts", () => {
    assert.equal(spokenReading(READING), "Course 3, piece 1, size 5 1/4 x 2 7/8 in, cut end cut");
  });
});

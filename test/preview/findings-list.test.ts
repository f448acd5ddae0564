import assert from "node:assert/strict";
import { exampleSource, exampleText } from "../support/examples.js";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { planPicture } from "./support/plan-picture.js";
import { paint, seenBox, showPlan } from "./support/show-plan.js";

const NAME = "faults.tileplan";

describe("the list of findings", function () {
  needsBrowser(this);
  const picture = planPicture(exampleText(NAME), exampleSource(NAME), 1, "f");
  let preview: OpenPreview;

  before(async () => {
    preview = await showPlan({}, picture);
  });

  after(() => preview.close());

  const buttons = () => preview.page.locator(".findings button");

  it("tells each finding: how grave, its code, where, what, and the source", async () => {
    assert.equal(await buttons().count(), picture.findings.length);
    const at = picture.findings.findIndex((each) => each.code === "cut/sliver");
    const finding = picture.findings[at]!;
    const text = await buttons().nth(at).innerText();
    for (const part of ["Error", finding.code, finding.message, finding.source!]) {
      assert.ok(text.includes(part), `${part} in ${text}`);
    }
    const title = picture.walls.find((wall) => wall.name === finding.wall)!.title;
    assert.ok(text.includes(title));
  });

  it("counts them in its heading", async () => {
    const heading = await preview.page.locator(".findings h2").innerText();
    assert.match(heading, /^Findings: \d+ errors, \d+ warnings/);
  });

  it("goes to a finding's line and brings its pieces into sight", async () => {
    await preview.page.locator(".stage").focus();
    for (let i = 0; i < 6; i++) await preview.page.keyboard.press("+");
    const before = await seenBox(preview);
    const at = picture.findings.findIndex(({ pieces }) => pieces.some((id) => id.endsWith("/1/1")));
    await buttons().nth(at).click();
    const { uri, range } = await preview.waitFor("select");
    assert.deepEqual({ uri, range }, picture.findings[at]!.place);
    assert.notDeepEqual(await seenBox(preview), before);
  });

  it("keeps the keyboard's place over an update", async () => {
    await buttons().nth(2).focus();
    const fewer = { ...picture, version: 2, findings: picture.findings.slice(0, 5) };
    await paint(preview, fewer);
    assert.equal(await buttons().count(), 5);
    assert.equal(
      await buttons()
        .nth(2)
        .evaluate((button) => button === document.activeElement),
      true,
    );
  });

  it("tells the reason of an allowed one", async () => {
    const allowed = { ...picture.findings[0]!, allowed: "The client wants it so", number: null };
    await paint(preview, { ...picture, version: 3, findings: [allowed] });
    assert.match(await buttons().innerText(), /Allowed: The client wants it so/);
    assert.equal(await preview.page.locator(".findings h2").innerText(), "Findings");
  });

  it("says when there is nothing, and when there are more than it shows", async () => {
    await paint(preview, { ...picture, version: 4, findings: [] });
    assert.equal(await preview.page.getByText("Nothing found.").isVisible(), true);
    const many = Array.from({ length: 203 }, () => picture.findings[0]!);
    await paint(preview, { ...picture, version: 5, findings: many });
    assert.equal(await buttons().count(), 200);
    assert.equal(await preview.page.getByText("and 3 more", { exact: true }).isVisible(), true);
  });
});

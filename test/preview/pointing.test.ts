import assert from "node:assert/strict";
import { Pointing } from "../../src/preview/pointing.js";
import type { PictureFinding, SpotQuestion, SpotReading } from "../../src/service/index.js";
import { exampleSource, exampleText } from "../support/examples.js";
import { planPicture } from "./support/plan-picture.js";
import { twoWalls } from "./support/show-plan.js";

const READING: SpotReading = {
  title: "Course 1, place 1",
  facts: [["visible", "5 7/8 x 2 7/8 in"]],
  outline: [1, 2, 3, 4, 5, 6],
  piece: "side/1/1",
  place: { uri: "u", range: { start: { line: 3, character: 0 }, end: { line: 4, character: 1 } } },
};

function begin(picture = twoWalls(1)) {
  const asked: [number, SpotQuestion][] = [];
  const selected: SpotReading[] = [];
  const found: PictureFinding[] = [];
  const spoken: string[] = [];
  const marks = new Map<string, readonly (readonly number[])[]>();
  let shown: string | null = null;
  const pointing = new Pointing({
    ask: (id, question) => asked.push([id, question]),
    select: (reading) => selected.push(reading),
    selectFinding: (finding) => found.push(finding),
    mark: (name, _at, rings) => marks.set(name, rings),
    unmark: (name) => marks.delete(name),
    showReading: (reading) => (shown = reading?.title ?? null),
    showFinding: (finding) => (shown = finding.code),
    speak: ({ title }) => spoken.push(title),
  });
  pointing.drawn(picture, picture.findings);
  const wall = picture.scene.walls.find((each) => each.name === "side") ?? picture.scene.walls[0]!;
  const place = (x: number, y: number) => ({ x: wall.at.x + x, y: wall.at.y + y });
  const answer = (reading: SpotReading | null = READING): void =>
    pointing.answer(asked.at(-1)![0], reading);
  return {
    pointing,
    asked,
    selected,
    found,
    spoken,
    marks,
    wall,
    place,
    answer,
    shown: () => shown,
  };
}

describe("pointing at the picture", () => {
  it("marks a piece at once, asks once, and shows the answer with the outline it gives", () => {
    const { pointing, asked, marks, place, answer, shown } = begin();
    pointing.pointAt(place(50, -30));
    pointing.pointAt(place(60, -31));
    assert.equal(asked.length, 1);
    assert.deepEqual(asked[0]![1].wall, "side");
    assert.equal(marks.get("hover")?.length, 1);
    assert.equal(shown(), null);
    answer();
    assert.equal(shown(), READING.title);
    assert.deepEqual(marks.get("hover"), [READING.outline]);
    pointing.pointAt(null);
    assert.equal(shown(), null);
    assert.equal(marks.has("hover"), false);
  });

  it("goes to what made a piece, even when the answer comes after the click", () => {
    const { pointing, selected, place, answer } = begin();
    pointing.tap(place(50, -30));
    assert.deepEqual(selected, []);
    answer();
    assert.deepEqual(selected, [READING]);
    pointing.tap(place(50, -30));
    assert.equal(selected.length, 2);
  });

  it("goes nowhere when the pointer moved on before the answer", () => {
    const { pointing, asked, selected, place } = begin();
    pointing.tap(place(50, -30));
    pointing.pointAt(place(400, -30));
    pointing.answer(asked[0]![0], READING);
    pointing.answer(asked.at(-1)![0], READING);
    assert.deepEqual(selected, []);
  });

  it("goes to a finding at its badge", () => {
    const name = "faults.tileplan";
    const { pointing, found, wall, shown } = begin(
      planPicture(exampleText(name), exampleSource(name), 1, name),
    );
    const badge = wall.badges[0]!;
    const place = { x: wall.at.x + badge.middle.x, y: wall.at.y + badge.middle.y };
    pointing.pointAt(place);
    pointing.tap(place);
    assert.equal(found[0]!.number, badge.number);
    assert.equal(shown(), found[0]!.code);
  });

  it("walks by keys, speaks each piece, and leaves the pointer alone until it stops", () => {
    const { pointing, asked, spoken, marks, wall, place, answer } = begin();
    pointing.startWalking(wall, place(50, -30));
    answer();
    assert.deepEqual(spoken, [READING.title]);
    pointing.step("right");
    answer();
    assert.equal(spoken.length, 2);
    assert.ok(asked[1]![1].x > asked[0]![1].x);
    assert.equal(pointing.walking, true);
    pointing.step("first");
    const before = asked.length;
    pointing.step("left");
    assert.equal(asked.length, before, "there is nothing further left");
    pointing.stopWalking();
    assert.equal(pointing.walking, false);
    assert.equal(marks.size, 0);
  });

  it("walks over to the other walls", () => {
    const { pointing, asked, wall, place, answer } = begin();
    pointing.startWalking(wall, place(50, -30));
    answer();
    pointing.stepWall(-1);
    assert.equal(asked.at(-1)![1].wall, "back");
    answer();
    pointing.stepWall(-1);
    assert.equal(asked.at(-1)![1].wall, "back");
  });

  it("finds the walked piece again in the next picture, by its place", () => {
    const { pointing, asked, wall, place, answer } = begin();
    pointing.startWalking(wall, place(250, -180));
    answer();
    const next = twoWalls(2);
    pointing.drawn(next, next.findings);
    const [first, again] = [asked[0]![1], asked.at(-1)![1]];
    assert.equal(again.version, 2);
    assert.deepEqual([again.x, again.y], [first.x, first.y]);
    pointing.drawn(null, []);
    assert.equal(pointing.walking, false);
  });

  it("asks place by place in a simplified picture, but not twice about one piece", () => {
    const { pointing, asked, marks, place, answer } = begin({ ...twoWalls(1), simplified: true });
    pointing.pointAt(place(50, -30));
    assert.equal(marks.size, 0, "a run of tiles is no piece");
    answer({ ...READING, outline: [10, 0, 100, 0, 100, -70, 10, -70] });
    pointing.pointAt(place(60, -31));
    assert.equal(asked.length, 1);
    pointing.pointAt(place(120, -31));
    assert.equal(asked.length, 2);
  });

  it("asks again about what is under a resting pointer when the picture changes", () => {
    const { pointing, asked, place, answer } = begin();
    pointing.pointAt(place(50, -30));
    answer();
    const next = twoWalls(2);
    pointing.drawn(next, next.findings);
    assert.equal(asked.at(-1)![1].version, 2);
  });
});

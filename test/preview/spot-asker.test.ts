import assert from "node:assert/strict";
import { SpotAsker } from "../../src/preview/spot-asker.js";
import type { SpotQuestion, SpotReading } from "../../src/service/index.js";

const question = (x: number): SpotQuestion => ({ uri: "u", version: 1, wall: "w", x, y: 0 });
const reading = { title: "Course 1" } as SpotReading;

function asker() {
  const sent: [number, number][] = [];
  const told: [string, SpotReading | null][] = [];
  const clock = { now: 0 };
  const spots = new SpotAsker<string>(
    (id, { x }) => sent.push([id, x]),
    (subject, answer) => told.push([subject, answer]),
    () => clock.now,
  );
  return { spots, sent, told, clock };
}

describe("asking what stands at a spot", () => {
  it("sends one question at a time, and of those that wait only the newest", () => {
    const { spots, sent, told } = asker();
    spots.ask("a", question(1));
    spots.ask("b", question(2));
    spots.ask("c", question(3));
    assert.deepEqual(sent, [[1, 1]]);
    spots.answer(1, reading);
    assert.deepEqual(told, [], "the pointer is elsewhere by now");
    assert.deepEqual(sent.at(-1), [2, 3]);
    spots.answer(2, reading);
    assert.deepEqual(told, [["c", reading]]);
  });

  it("passes over answers to other questions", () => {
    const { spots, told } = asker();
    spots.ask("a", question(1));
    spots.answer(7, reading);
    assert.deepEqual(told, []);
    spots.forget();
    spots.answer(1, reading);
    assert.deepEqual(told, []);
  });

  it("does not wait for ever", () => {
    const { spots, sent, clock } = asker();
    spots.ask("a", question(1));
    clock.now = 1001;
    spots.ask("b", question(2));
    assert.equal(sent.length, 2);
  });
});

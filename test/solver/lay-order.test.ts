import assert from "node:assert/strict";
import type { Lay } from "../../src/model/index.js";
import { inCourseOrder, inPlacingOrder } from "../../src/solver/lay-order.js";
import { area, layOf, past, place, wallOf } from "./several-lays.js";

const rest = layOf("rest");
const low = layOf("low", { area: area({ top: place(400) }) });
const middle = layOf("middle", { area: area({ bottom: past("low"), top: place(500) }) });
const high = layOf("high", { area: area({ bottom: past("middle") }) });
const panel = layOf("panel", {
  area: area({ left: place(200), right: place(400), bottom: place(300), top: place(500) }),
});

const names = (lays: readonly Lay[]) => lays.map(({ name }) => name);
const placing = (...lays: Lay[]) => names(inPlacingOrder(lays));

/** Each lay with the one whose courses it counts on, and what its ids begin with. */
function counting(...lays: Lay[]) {
  return inCourseOrder(wallOf(lays).wall).map(({ lay, on, idPrefix }) => [
    lay.name,
    on?.name ?? null,
    idPrefix,
  ]);
}

describe("the order in which lays get their places", () => {
  it("has panels first, then lays with bounds of their own", () => {
    assert.deepEqual(placing(low, panel), ["panel", "low"]);
    assert.deepEqual(placing(panel, low), ["panel", "low"]);
  });

  it("has the rest of the wall last, wherever it is stated", () => {
    assert.deepEqual(placing(rest, low, panel), ["panel", "low", "rest"]);
  });

  it("has a lay after the one that it stands on, however often that stands on another", () => {
    assert.deepEqual(placing(high, middle, low), ["low", "middle", "high"]);
    assert.deepEqual(placing(rest, high, middle, low), ["low", "middle", "high", "rest"]);
  });

  it("has a lay after the one whose head joints it goes on with", () => {
    const onwards = layOf("onwards", { area: area({ top: place(200) }), goesOnFrom: "low" });
    assert.deepEqual(placing(onwards, low), ["low", "onwards"]);
  });

  it("has the rest before what stands on it", () => {
    const over = layOf("over", { area: area({ bottom: past("rest") }) });
    assert.deepEqual(placing(over, rest), ["rest", "over"]);
  });

  it("has every lay once, even those that wait for each other", () => {
    const one = layOf("one", { area: area({ bottom: past("other") }) });
    const other = layOf("other", { area: area({ bottom: past("one") }) });
    assert.deepEqual(placing(one, other, low), ["low", "one", "other"]);
  });

  it("takes a name that no lay has for nothing", () => {
    const lost = layOf("lost", { area: area({ bottom: past("nowhere") }) });
    assert.deepEqual(placing(lost, rest), ["lost", "rest"]);
  });
});

describe("the order in which courses are counted", () => {
  it("is from the bottom up, under the wall's name alone", () => {
    assert.deepEqual(counting(high, low, middle), [
      ["low", null, "back"],
      ["middle", "low", "back"],
      ["high", "middle", "back"],
    ]);
  });

  it("begins again, under its name too, in a lay that stands on no other", () => {
    const left = layOf("left", { area: area({ right: place(400) }) });
    assert.deepEqual(counting(left, rest), [
      ["left", null, "back"],
      ["rest", null, "back/rest"],
    ]);
  });

  it("has the first lay that is no panel for the main one", () => {
    assert.deepEqual(counting(panel, rest), [
      ["rest", null, "back"],
      ["panel", null, "back/panel"],
    ]);
    assert.deepEqual(counting(panel), [["panel", null, "back"]]);
  });

  it("counts on beside the main one too", () => {
    const left = layOf("left", { area: area({ right: place(300), top: place(400) }) });
    const over = layOf("over", { area: area({ right: place(300), bottom: past("left") }) });
    assert.deepEqual(counting(rest, over, left), [
      ["rest", null, "back"],
      ["left", null, "back/left"],
      ["over", "left", "back/left"],
    ]);
  });

  it("takes a lay for the lowest whose bottom no lay of the wall bears", () => {
    assert.deepEqual(counting(layOf("lost", { area: area({ bottom: past("nowhere") }) })), [
      ["lost", null, "back"],
    ]);
  });

  it("counts lays that stand on each other by themselves, and what stands on them on", () => {
    const one = layOf("one", { area: area({ bottom: past("other") }) });
    const other = layOf("other", { area: area({ bottom: past("one") }) });
    const over = layOf("over", { area: area({ bottom: past("one") }) });
    const self = layOf("self", { area: area({ bottom: past("self") }) });
    assert.deepEqual(counting(over, one, other, self), [
      ["one", null, "back"],
      ["over", "one", "back"],
      ["other", null, "back/other"],
      ["self", null, "back/self"],
    ]);
  });
});

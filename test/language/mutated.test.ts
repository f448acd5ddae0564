import assert from "node:assert/strict";
import type { Diagnostic, Plan, SourceRange } from "../../src/model/index.js";
import { LONGEST } from "../../src/measure/index.js";
import { mutate, seeded } from "./mutate.js";
import { costOf, FILE, FULL, resolveText, STOCK } from "./telling.js";

const MUTATIONS = 2000;
const SEED = 20_260_101;
const WITH_USE = `use "stock.tileplan"\n${FULL.slice(FULL.indexOf("wall back"))}`;
const STOCK_FILE = "plans/stock.tileplan";

function assertInside({ start, end }: SourceRange, text: string): void {
  const lines = text.split(/\r\n|\n|\r/);
  for (const { line, character } of [start, end]) {
    assert.ok(line >= 0 && line < lines.length, `line ${line} of ${lines.length}`);
    assert.ok(character >= 0 && character <= lines[line]!.length, `character ${character}`);
  }
  assert.ok(start.line < end.line || (start.line === end.line && start.character <= end.character));
}

function assertPlaces(diagnostic: Diagnostic, texts: Readonly<Record<string, string>>): void {
  for (const { file, range } of [diagnostic, ...(diagnostic.related ?? [])]) {
    assert.ok(file in texts, file);
    assertInside(range, texts[file]!);
  }
  assert.ok(diagnostic.message.length > 0 && !/NaN|undefined|\[object/.test(diagnostic.message));
}

/** What the solver may count on, whatever the text. */
function assertSound(plan: Plan): void {
  const names = new Set(plan.walls.map(({ name }) => name));
  assert.equal(names.size, plan.walls.length);
  for (const { size, edges, openings, holes, lays } of plan.walls) {
    const [lay] = lays;
    for (const length of [size.across, size.up]) {
      assert.ok(Number.isSafeInteger(length) && length > 0 && length <= LONGEST);
    }
    for (const { meets, measured, joint } of Object.values(edges)) {
      if (meets.kind === "corner") assert.ok(names.has(meets.wall));
      assert.ok(measured.every(({ at }, i) => i === 0 || at > measured[i - 1]!.at));
      assert.ok(joint === null || joint.width >= 0);
    }
    for (const { size: opening, frame } of openings) {
      assert.ok(opening.across > 0 && opening.up > 0);
      assert.ok(frame === null || 2 * frame.inset < Math.min(opening.across, opening.up));
    }
    assert.ok(holes.every(({ across }) => across > 0));
    if (!lay) continue;
    assert.ok(plan.tiles.includes(lay.tile));
    assert.ok(lay.joint.min >= 0 && lay.joint.min <= lay.joint.max);
    if (lay.bond.kind === "running") assert.ok(lay.bond.p > 0 && lay.bond.p < lay.bond.q);
    if (lay.up?.kind === "at-opening") assert.ok(openings.includes(lay.up.opening));
  }
}

describe("two thousand mutated plans", () => {
  const random = seeded(SEED);
  const plans = Array.from({ length: MUTATIONS }, (_, i) => {
    const stock = i % 2 === 0 ? STOCK : mutate(STOCK, random);
    return { text: mutate(i % 2 === 0 ? FULL : WITH_USE, random), stock };
  });

  it("are read without a crash, each in under a second, and told inside their texts", () => {
    for (const { text, stock } of plans) {
      try {
        let outcome = resolveText("");
        const cost = costOf(() => (outcome = resolveText(text, { [STOCK_FILE]: stock })));
        const { plan, diagnostics } = outcome;
        assert.ok(cost < 1000, `${cost} ms`);
        for (const diagnostic of diagnostics) {
          assertPlaces(diagnostic, { [FILE]: text, [STOCK_FILE]: stock });
        }
        assertSound(plan);
      } catch (error) {
        throw new Error(`in the plan\n${JSON.stringify(text)}`, { cause: error });
      }
    }
  });

  it("really are broken, nearly all of them, and yet most of each is understood", () => {
    const outcomes = plans.map(({ text, stock }) => resolveText(text, { [STOCK_FILE]: stock }));
    const broken = outcomes.filter(({ diagnostics }) => diagnostics.length > 0);
    const withWalls = outcomes.filter(({ plan }) => plan.walls.length > 0);
    assert.ok(broken.length > 0.7 * MUTATIONS, `${broken.length} broken`);
    assert.ok(withWalls.length > 0.8 * MUTATIONS, `${withWalls.length} with walls`);
  });
});

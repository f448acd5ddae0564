import assert from "node:assert/strict";
import { FILE, FULL, INCH, planOf, resolveText, told } from "./telling.js";

describe("resolving", () => {
  it("finds nothing to tell of a plan that is in order", () => {
    assert.deepEqual(told(FULL), []);
  });

  it("takes an empty text for a plan with nothing in it", () => {
    const { plan, diagnostics } = resolveText("");
    const nowhere = { line: 0, character: 0 };
    const range = { start: nowhere, end: nowhere };
    assert.deepEqual(diagnostics, []);
    assert.deepEqual(plan, {
      title: "",
      units: "inch",
      bed: 0,
      limits: {},
      tiles: [],
      trims: [],
      saw: null,
      mortar: null,
      grout: null,
      sealant: null,
      walls: [],
      wishes: [],
      allows: [],
      origin: { file: FILE, range, head: range },
    });
  });

  it("has the plan's title, units, bed and rules", () => {
    const { title, units, bed, limits } = planOf(FULL);
    assert.deepEqual([title, units, bed], ["Alder Court guest bath", "inch", INCH / 8]);
    assert.deepEqual(Object.keys(limits), ["sliver", "half", "offset"]);
  });

  it("gives the same plan whatever the order of its statements", () => {
    const blocks = FULL.split(/\n(?=\S)/).map((block) => block.replace(/^}\n?/, ""));
    const closed = blocks.map((block) =>
      /{$/m.test(block.split("\n")[0]!.replace(/#.*/, "").trim()) ? `${block}\n}` : block,
    );
    const shuffled = [...closed].reverse().filter((block) => !block.startsWith("}"));
    const bare = (text: string): unknown => {
      const { walls, tiles, trims, ...rest } = planOf(text);
      const sorted = [...walls].sort((a, b) => a.name.localeCompare(b.name));
      const withoutPlaces = (key: string, value: unknown): unknown =>
        key === "origin" ? undefined : value;
      return JSON.parse(JSON.stringify({ ...rest, tiles, trims, sorted }, withoutPlaces));
    };
    const text = `${shuffled.join("\n")}\n`;
    assert.deepEqual(told(text), []);
    assert.deepEqual(bare(text), bare(FULL));
  });

  it("tells everything in the order of the text", () => {
    const lines = resolveText(
      "bed a\nunits x\n}\nwall w {\n  size 0 x b\n}\nlet c = c\n",
    ).diagnostics.map(({ range }) => range.start.line);
    assert.deepEqual(lines, [0, 1, 2, 4, 4, 6]);
  });

  it("keeps the rest of a plan when a line is broken", () => {
    const broken = FULL.replace("bond running 1/2", "bond runnin 1/2").replace(
      "units inch",
      "units",
    );
    const { plan, diagnostics } = resolveText(broken);
    assert.deepEqual(
      diagnostics.map(({ code }) => code),
      ["syntax/unexpected", "syntax/unexpected"],
    );
    assert.deepEqual(
      plan.walls.map(({ lays }) => lays[0]?.tile.name),
      [undefined, "field"],
    );
    assert.deepEqual(plan.walls[0]!.openings.length, 2);
  });
});

import assert from "node:assert/strict";
import { Resvg } from "@resvg/resvg-js";
import {
  fillAndStroke,
  fillOf,
  strokeOf,
  styleSheet,
  TONES,
  tonesAs,
} from "../../src/drawing/theme.js";
import type { ToneName } from "../../src/drawing/theme.js";

/** Contrast ratio of two colours (WCAG 2.2, relative luminance). */
function contrast(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high! + 0.05) / (low! + 0.05);
}

function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const part = parseInt(colour.slice(i, i + 2), 16) / 255;
    return part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

const names = Object.keys(TONES) as ToneName[];

describe("the picture's palette", () => {
  for (const kind of ["light", "dark", "plain"] as const) {
    it(`is readable, ${kind}: text at 4.5 to 1 or better (WCAG 2.2, 1.4.3)`, () => {
      const paper = TONES.paper[kind];
      for (const name of ["ink", "muted", "error", "warning", "information"] as const) {
        const ratio = contrast(TONES[name][kind], paper);
        assert.ok(ratio >= 4.5, `${name} on paper: ${ratio.toFixed(2)}`);
      }
    });

    it(`tells joints and lines from what is round them, ${kind}: 3 to 1 or better (WCAG 2.2, 1.4.11)`, () => {
      const pairs = [
        ["grout", "tile"],
        ["soft", "tile"],
        ["cut-hatch", "cut"],
        ["notch-hatch", "notch"],
        ["scribe-hatch", "scribe"],
        ["hole-hatch", "hole"],
        ["sliver-hatch", "sliver"],
        ["trim-line", "trim"],
        ["level", "paper"],
      ] as const;
      for (const [one, other] of pairs) {
        const ratio = contrast(TONES[one][kind], TONES[other][kind]);
        assert.ok(ratio >= 3, `${one} on ${other}: ${ratio.toFixed(2)}`);
      }
    });
  }

  it("has a line round each piece where tile is of the paper's colour: at a free edge nothing else shows it", () => {
    const ways = styleSheet().split("@media ");
    const linesIn = (query: string): boolean =>
      ways.some((way) => way.startsWith(query) && /kind=whole.*path\{stroke:/.test(way));
    for (const [query, kind] of [
      ["(prefers-contrast:more)", "plain"],
      ["print", "plain"],
      ["(forced-colors:active)", "forced"],
    ] as const) {
      assert.equal(TONES.tile[kind], TONES.paper[kind]);
      assert.ok(linesIn(query), query);
    }
    assert.ok(!linesIn("(prefers-color-scheme:dark)"));
  });

  it("can be overridden tone by tone", () => {
    const sheet = styleSheet();
    for (const name of names) {
      assert.ok(
        sheet.includes(`.gl-fill-${name}{fill:var(--gaugelath-${name},var(--gl-${name}))}`),
      );
      assert.ok(
        !sheet.includes(`--gaugelath-${name}:`),
        "the sheet never sets the host's property",
      );
    }
  });

  it("has its ways for dark, more contrast, paper and the system's colours", () => {
    const sheet = styleSheet();
    const queries = ["(prefers-color-scheme:dark)", "(prefers-contrast:more)", "print"];
    for (const query of [...queries, "(forced-colors:active)"]) {
      assert.ok(sheet.includes(`@media ${query}{`), query);
    }
    assert.ok(tonesAs("dark", ".x").startsWith(`.x{--gl-paper:${TONES.paper.dark};`));
  });

  it("says its light colours as attributes too, for readers without custom properties", () => {
    assert.deepEqual(fillOf("tile"), { fill: TONES.tile.light, class: "gl-fill-tile" });
    assert.equal(strokeOf("ink").fill, "none");
    assert.equal(fillAndStroke("tile", "ink").class, "gl-fill-tile gl-stroke-ink");
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><style>${styleSheet()}</style><rect width="4" height="4" class="gl-fill-soft" fill="${TONES.soft.light}"/></svg>`;
    assert.equal(
      new Resvg(svg).render().pixels.subarray(0, 3).toString("hex"),
      TONES.soft.light.slice(1),
    );
  });
});

import assert from "node:assert/strict";
import {
  doublePieceArea,
  pieceBounds,
  type SolvedInside,
  type SolvedLay,
  visibleBounds,
  type Box,
} from "../../src/solver/index.js";
import { faceOf, insidesOf, nicheText, type NicheText } from "../solver/insides/niche-text.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { randomFrom, type Random } from "../support/random.js";

const MM = 1_000_000;
const PLANS = 60;

interface Sketch {
  readonly parts: NicheText;
  readonly at: readonly [number, number];
  readonly size: readonly [number, number];
  readonly fall: number;
}

/** A niche anywhere on a wall of 1210 x 1018, on the joints or off them. */
function sketch(random: Random): Sketch {
  const across = random.integer(60, 700);
  const up = random.integer(60, 600);
  const at = [random.integer(10, 1200 - across - 10), random.integer(10, 1000 - up - 10)] as const;
  const depth = random.integer(40, 330);
  const fall = random.integer(-3, 12);
  const bond = random.pick(["stack", "running 1/2", "running 1/3", "running 1/4"]);
  return {
    at,
    size: [across, up],
    fall,
    parts: {
      // A module of 204, so that halves, thirds and quarters of it are whole.
      face: "202mm x 100mm",
      at: `${at[0]}mm, ${at[1]}mm`,
      size: `${across}mm x ${up}mm`,
      bond,
      niche: `depth ${depth}mm\n fall ${fall}mm`,
    },
  };
}

function each(check: (sketch: Sketch, told: string) => void): void {
  for (let seed = 1; seed <= PLANS; seed++) {
    const one = sketch(randomFrom(seed));
    check(one, `seed ${seed}: ${JSON.stringify(one.parts)}`);
  }
}

function seenBoxes({ pieces }: SolvedLay): Box[] {
  return Array.from({ length: pieces.count }, (_, i) => visibleBounds(pieces, i)).filter(
    (box) => box !== null,
  );
}

const words = ({ left, bottom, right, top }: Box) => [left, bottom, right, top].join(" ");

/** What of a box is within another one; null where nothing is. */
function clipped(box: Box, to: Box): Box | null {
  const left = Math.max(box.left, to.left);
  const bottom = Math.max(box.bottom, to.bottom);
  const right = Math.min(box.right, to.right);
  const top = Math.min(box.top, to.top);
  return left < right && bottom < top ? { left, bottom, right, top } : null;
}

describe("the back of any niche", () => {
  it("shows the joints that the wall would have there without it", () => {
    each(({ parts, at, size, fall }, told) => {
      const back = faceOf(insidesOf(parts), "back");
      const whole = nicheText(parts).replace(/ {2}niche shelf \{[^}]*\}\n/, "");
      const { laid } = firstWall(solveClean(whole));
      // Seen is what the others, 11 thick, leave of it.
      const window: Box = {
        left: (at[0] + 11) * MM,
        right: (at[0] + size[0] - 11) * MM,
        bottom: (at[1] + fall + 11) * MM,
        top: (at[1] + size[1] - 11) * MM,
      };
      const through = seenBoxes(laid).flatMap((box) => clipped(box, window) ?? []);
      const shown = back.lays.flatMap(seenBoxes).map((box) => ({
        left: box.left + at[0] * MM,
        right: box.right + at[0] * MM,
        bottom: box.bottom + (at[1] + fall) * MM,
        top: box.top + (at[1] + fall) * MM,
      }));
      assert.deepEqual(shown.map(words).sort(), through.map(words).sort(), told);
    });
  });
});

/** The area of what lies in a region that has straight sides, by its tiles clipped one by one. */
function areaOf({ region, lattice }: SolvedLay): bigint {
  const { bounds } = region;
  let sum = 0n;
  const up = lattice.face.up + lattice.joint;
  const across = lattice.face.across + lattice.joint;
  for (let course = 1; ; course++) {
    const bottom = lattice.y + (course - 1) * up;
    if (bottom >= bounds.top) return sum;
    const shift = Math.round((((course - 1) % lattice.q) * lattice.p * across) / lattice.q);
    for (let x = lattice.x + shift - 20 * across; x < bounds.right; x += across) {
      const tile = {
        left: x,
        bottom,
        right: x + lattice.face.across,
        top: bottom + lattice.face.up,
      };
      const part = clipped(tile, bounds);
      if (part) sum += BigInt(part.right - part.left) * BigInt(part.top - part.bottom);
    }
  }
}

describe("the surfaces of any niche", () => {
  it("are covered by their tiles and joints to the square nanometre", () => {
    each(({ parts }, told) => {
      for (const inside of insidesOf(parts)) {
        if (inside.face === "left" || inside.face === "right") continue;
        for (const lay of inside.lays) {
          const { pieces } = lay;
          let doubled = 0n;
          for (let i = 0; i < pieces.count; i++) doubled += doublePieceArea(pieces, i);
          assert.equal(doubled, 2n * areaOf(lay), `${inside.face}, ${told}`);
        }
      }
    });
  });

  it("keep every piece inside, and apart from the others", () => {
    each(({ parts }, told) => {
      for (const { lays } of insidesOf(parts)) {
        for (const { pieces, region } of lays) {
          const boxes = Array.from({ length: pieces.count }, (_, i) => pieceBounds(pieces, i));
          boxes.forEach((box, i) => {
            assert.deepEqual(clipped(box, region.bounds), box, told);
            for (const other of boxes.slice(i + 1)) assert.equal(clipped(box, other), null, told);
          });
        }
      }
    });
  });

  it("mirror with their wall: the left side is the right one's mirror image", () => {
    each(({ parts, at, size }, told) => {
      if (parts.bond === "running 1/3" || parts.bond === "running 1/4") return;
      const mirrored: NicheText = {
        ...parts,
        at: `${1210 - at[0] - size[0]}mm, ${at[1]}mm`,
        across: "full tile from right",
      };
      const [one, other] = [insidesOf(parts), insidesOf(mirrored)];
      const turned = (inside: SolvedInside): string[] =>
        inside.lays.flatMap(({ pieces }) =>
          Array.from({ length: pieces.count }, (_, i) => {
            const box = pieceBounds(pieces, i);
            const { across } = inside.wall.size;
            return words({ ...box, left: across - box.right, right: across - box.left });
          }),
        );
      const plain = (inside: SolvedInside): string[] =>
        inside.lays.flatMap(({ pieces }) =>
          Array.from({ length: pieces.count }, (_, i) => words(pieceBounds(pieces, i))),
        );
      const pairs = [
        ["back", "back"],
        ["left", "right"],
        ["right", "left"],
        ["sill", "sill"],
        ["head", "head"],
      ] as const;
      for (const [face, image] of pairs) {
        const found = turned(faceOf(other, image)).sort();
        assert.deepEqual(found, plain(faceOf(one, face)).sort(), `${face}, ${told}`);
      }
    });
  });

  it("are the same whatever unit the plan is written in", () => {
    each(({ parts }, told) => {
      const plain = (units: string) =>
        insidesOf({ ...parts, units }).map(({ wall, lays }) => [
          wall.size,
          lays.map(({ pieces }) => [...pieces.bounds]),
        ]);
      assert.deepEqual(plain("inch"), plain("mm"), told);
    });
  });
});

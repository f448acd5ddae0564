import { NM_PER, type Nm } from "../../src/measure/index.js";
import { halfLimit, sliverLimit, type Lay } from "../../src/model/index.js";
import type { Region } from "../../src/solver/index.js";

/** Costs that keep the order: any sliver outweighs all halves, any half all of the balance. */
const SLIVER = 1_000_000;
const UNDER_HALF = 1000;

/** One edge that tiles meet in one phase of the bond: how much of the last tile is seen there. */
interface Meeting {
  readonly name: string;
  readonly edge: Nm;
  /** The tiles lie before the edge (they end at it), or begin at it. */
  readonly tiles: "before" | "after";
  readonly shift: Nm;
  readonly isEnd: boolean;
}

/**
 * The choice of a start as a mixed-integer program in CPLEX LP format, lengths in inches: no slivers
 * at any upright or level edge, no cut under half in height, and then the balance of both
 * directions. Counts of pieces, cuts and tiles, which the solver weighs too, are left out.
 */
export function integerModel(region: Region, lay: Lay): string {
  const { across, up } = lay.tile.face;
  const joint = lay.joint.min;
  const { q, p } = lay.bond.kind === "running" ? lay.bond : { p: 0, q: 1 };
  const phases = Array.from({ length: q }, (_, n) => ((n * p) / q) * (across + joint));
  const boxes = region.takeaways.map(({ box }) => box);
  const model = new Model();
  phases.forEach((shift, n) => {
    const [left, right] = [region.left.value, region.right.value];
    model.meet(
      [
        meeting(`l${n}`, Math.max(...left), "after", shift, true),
        meeting(`r${n}`, Math.min(...right), "before", shift, true),
        ...boxes.flatMap((box, i) => [
          meeting(`jl${i}p${n}`, box.left, "before", shift, false),
          meeting(`jr${i}p${n}`, box.right, "after", shift, false),
        ]),
      ],
      { start: "x", face: across, joint, sliver: sliverLimit(across, {}), half: 0 },
    );
  });
  model.meet(
    [
      meeting("b", Math.max(...region.bottom.value), "after", 0, true),
      meeting("t", Math.min(...region.top.value), "before", 0, true),
      ...boxes.flatMap((box, i) => [
        meeting(`s${i}`, box.bottom, "before", 0, false),
        meeting(`h${i}`, box.top, "after", 0, false),
      ]),
    ],
    { start: "y", face: up, joint, sliver: sliverLimit(up, {}), half: halfLimit(up, {}) },
  );
  // Ends pair off in the order of size, which is the pairing that differs least in sum.
  model.pair(
    phases.map((_, n) => `l${n}`),
    phases.map((_, n) => `r${n}`),
    across,
  );
  model.pair(["b"], ["t"], up);
  return model.text();
}

function meeting(
  name: string,
  edge: Nm,
  tiles: Meeting["tiles"],
  shift: Nm,
  isEnd: boolean,
): Meeting {
  return { name, edge, tiles, shift, isEnd };
}

interface Row {
  readonly start: "x" | "y";
  readonly face: Nm;
  readonly joint: Nm;
  readonly sliver: Nm;
  readonly half: Nm;
}

class Model {
  private readonly costs: string[] = [];
  private readonly rows: string[] = [];
  private readonly bounds: string[] = ["0 <= x <= 100", "0 <= y <= 100"];
  private readonly whole: string[] = [];
  private readonly binary: string[] = [];

  /** What is seen of the last tile, `w`, is its reach `u` up to the face; `k` counts the modules. */
  meet(meetings: readonly Meeting[], { start, face, joint, sliver, half }: Row): void {
    const module = inches(face + joint);
    for (const { name, edge, tiles, shift, isEnd } of meetings) {
      // after: u = start + shift + face + k M - edge; before: u = edge - start - shift - k M
      const fixed = tiles === "after" ? shift + face - edge : edge - shift;
      const sign = tiles === "after" ? "-" : "+";
      this.rows.push(`u${name} ${sign} ${start} + ${module} k${name} = ${inches(fixed)}`);
      this.bounds.push(`0.000001 <= u${name} <= ${module}`, `-1000 <= k${name} <= 1000`);
      this.whole.push(`k${name}`);
      this.forbid(`z${name}`, `u${name}`, inches(sliver), SLIVER);
      if (half > 0) this.forbid(`g${name}`, `u${name}`, inches(half), UNDER_HALF);
      if (isEnd) this.cap(name, inches(face), module);
    }
  }

  /** The sum of what paired ends differ by, over the best pairing of two or fewer phases. */
  pair(lows: readonly string[], highs: readonly string[], face: Nm): void {
    const most = inches(face);
    const pairings =
      lows.length === 1
        ? [[0]]
        : [
            [0, 1],
            [1, 0],
          ];
    const name = lows.join("");
    this.costs.push(`d${name}`);
    if (pairings.length > 1) this.binary.push(`o${name}`);
    pairings.forEach((pairing, n) => {
      const parts = pairing.map((high, low) => {
        const part = `e${name}${n}${low}`;
        this.rows.push(`${part} - w${lows[low]!} + w${highs[high]!} >= 0`);
        this.rows.push(`${part} + w${lows[low]!} - w${highs[high]!} >= 0`);
        return part;
      });
      const sum = parts.map((part) => `- ${part}`).join(" ");
      const slack = 2 * most;
      if (pairings.length === 1) this.rows.push(`d${name} ${sum} >= 0`);
      else if (n === 0) this.rows.push(`d${name} ${sum} + ${slack} o${name} >= 0`);
      else this.rows.push(`d${name} ${sum} - ${slack} o${name} >= ${-slack}`);
    });
  }

  text(): string {
    return [
      "Minimize",
      ` cost: ${this.costs.join(" + ")}`,
      "Subject To",
      ...this.rows.map((row, i) => ` c${i}: ${row}`),
      "Bounds",
      ...this.bounds.map((bound) => ` ${bound}`),
      "General",
      ` ${this.whole.join(" ")}`,
      "Binary",
      ` ${this.binary.join(" ")}`,
      "End",
      "",
    ].join("\n");
  }

  private forbid(name: string, reach: string, limit: number, cost: number): void {
    this.rows.push(`${reach} + ${limit} ${name} >= ${limit}`);
    this.binary.push(name);
    this.costs.push(`${cost} ${name}`);
  }

  /** w = min(u, face), by a binary that says which. */
  private cap(name: string, face: number, module: number): void {
    this.rows.push(`w${name} - u${name} <= 0`);
    this.rows.push(`w${name} - u${name} + ${module} m${name} >= 0`);
    this.rows.push(`w${name} - ${face} m${name} >= 0`);
    this.bounds.push(`0 <= w${name} <= ${face}`);
    this.binary.push(`m${name}`);
  }
}

function inches(length: Nm): number {
  return length / NM_PER.inch;
}

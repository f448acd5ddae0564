import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import ClipperLib from "clipper-lib";
import type { Box, SolvedLay, SolvedWall } from "../../src/solver/index.js";
import { tileAt } from "../support/reference-lattice.js";
import type { Subject } from "./bundle.js";
import { squareWall } from "./plans.js";
import { sink, time, timeInTurn, type Timing } from "./statistics.js";
import { aligned, type Bar } from "./table.js";

const MILLION = 1_000_000;
/** One tile in so many is given to the clipping library; its time is scaled by what was left out. */
const SAMPLE = 100;

/** A rectilinear wall of a million pieces, against a bare loop and a clipping library. */
export function benchMillion(subject: Subject): { timings: Timing[]; bars: Bar[]; note: string } {
  const { plan } = planOf(subject, MILLION);
  const wall = subject.solve(plan).walls[0]!;
  const laid = wall.lays[0]!;
  const region = regionPaths(wall);
  const { solve, bare } = timeInTurn(
    { warmup: 3, rounds: 15 },
    { solve: () => subject.solve(plan), bare: () => writeRectangles(laid) },
  ) as Record<"solve" | "bare", Timing>;
  const clipped = time("", { warmup: 1, rounds: 3 }, () => clipSample(laid, region));
  const { count } = laid.pieces;
  const clipping = scaled(clipped, `clipping library, 1 tile in ${SAMPLE}, scaled`, SAMPLE);
  return {
    timings: [
      { ...solve, name: `solve, ${count} pieces` },
      { ...bare, name: "bare loop, same rectangles" },
      clipping,
    ],
    bars: [
      {
        name: "a million pieces, over a bare loop",
        found: solve.median / bare.median,
        limit: 4,
        sense: "at most",
        unit: "x",
      },
      {
        name: "a million pieces, faster than clipping",
        found: clipping.median / solve.median,
        limit: 20,
        sense: "at least",
        unit: "x",
      },
    ],
    note: `The clipping library got every ${SAMPLE}th tile; its times are the measured ones x ${SAMPLE}.`,
  };
}

/** How time and memory grow with the pieces. */
export function benchGrowth(subject: Subject): { table: string; bars: Bar[] } {
  const rows = [10_000, 100_000, MILLION].map((pieces) => {
    const { plan } = planOf(subject, pieces);
    const spent = time("", { warmup: 3, rounds: pieces < MILLION ? 31 : 9 }, () => {
      return subject.solve(plan);
    }).median;
    sink.value = null;
    const before = bytesHeld();
    const solved = subject.solve(plan);
    const bytes = bytesHeld() - before;
    return { count: solved.walls[0]!.lays[0]!.pieces.count, spent, bytes };
  });
  const [, hundredThousand, million] = rows;
  const table = aligned([
    ["pieces", "solve", "ns a piece", "memory", "bytes a piece"],
    ...rows.map(({ count, spent, bytes }) => [
      `${count}`,
      `${spent.toFixed(2)} ms`,
      ((spent * 1e6) / count).toFixed(1),
      `${(bytes / 2 ** 20).toFixed(2)} MiB`,
      (bytes / count).toFixed(1),
    ]),
  ]);
  const grown = (of: "spent" | "bytes") =>
    million![of] / million!.count / (hundredThousand![of] / hundredThousand!.count);
  return {
    table,
    bars: [
      bar("time a piece, a million over 100,000", grown("spent"), 2),
      bar("memory a piece, a million over 100,000", grown("bytes"), 1.25),
    ],
  };
}

function bar(name: string, found: number, limit: number): Bar {
  return { name, found, limit, sense: "at most", unit: "x" };
}

function planOf(subject: Subject, pieces: number) {
  const source = { file: "bench.tileplan", root: "", read: () => null };
  return subject.resolve(subject.parse(squareWall(pieces)), source);
}

/** The same rectangles in the same columns, written by a loop that knows them beforehand. */
function writeRectangles({ pieces: { count }, lattice, courses, pieces }: SolvedLay): unknown {
  const bounds = new Float64Array(4 * count);
  const course = new Int32Array(count);
  const column = new Int32Array(count);
  const part = new Uint8Array(count);
  const cut = new Uint8Array(count);
  const { face, joint } = lattice;
  const left = pieces.bounds[0]!;
  let i = 0;
  for (const { number, bottom, top } of courses) {
    const many = pieces.courseStart[number]! - pieces.courseStart[number - 1]!;
    let x = left;
    for (let k = 0; k < many; k++, i++, x += face.across + joint) {
      bounds[4 * i] = x;
      bounds[4 * i + 1] = bottom;
      bounds[4 * i + 2] = x + face.across;
      bounds[4 * i + 3] = top;
      course[i] = number;
      column[i] = k + 1;
    }
  }
  return { bounds, course, column, part, cut };
}

/** Every SAMPLE-th tile, clipped by the region (one outline with the window as a hole in it). */
function clipSample(laid: SolvedLay, region: Path[]): number {
  const { pieces } = laid;
  let parts = 0;
  for (let i = 0; i < pieces.count; i += SAMPLE) {
    const tile = tileAt(laid, pieces.course[i]!, pieces.column[i]! - 1);
    const clipper = new ClipperLib.Clipper();
    clipper.AddPaths([pathOf(tile)], ClipperLib.PolyType.ptSubject, true);
    clipper.AddPaths(region, ClipperLib.PolyType.ptClip, true);
    const { pftEvenOdd } = ClipperLib.PolyFillType;
    const shared: Path[] = [];
    clipper.Execute(ClipperLib.ClipType.ctIntersection, shared, pftEvenOdd, pftEvenOdd);
    parts += shared.length;
  }
  return parts;
}

function regionPaths({ region }: SolvedWall): Path[] {
  return [region.bounds, ...region.takeaways.map(({ box }) => box)].map(pathOf);
}

type Path = { X: number; Y: number }[];

function pathOf({ left, bottom, right, top }: Box): Path {
  return [
    { X: left, Y: bottom },
    { X: right, Y: bottom },
    { X: right, Y: top },
    { X: left, Y: top },
  ];
}

function scaled(timing: Timing, name: string, by: number): Timing {
  const { median, p95, min } = timing;
  return { ...timing, name, median: median * by, p95: p95 * by, min: min * by };
}

let collect: (() => void) | null = null;

/** Bytes held on the heap and in flat arrays, after collecting what is no longer used. */
function bytesHeld(): number {
  if (!collect) {
    setFlagsFromString("--expose-gc");
    collect = runInNewContext("gc") as () => void;
  }
  for (let i = 0; i < 3; i++) collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

// A process of its own: takes the random rooms from one seed up to another, the whole way from text to picture and
// takeoff, holds them to all laws, and tells its parent what was wrong with any, and which was the slowest.
import { buildRoomScene } from "../../src/drawing/index.js";
import { drawHeadless } from "../../src/drawing/headless.js";
import { run } from "../../src/engine.js";
import { takeoff } from "../../src/takeoff/index.js";
import { checkLays } from "./check-lays.js";
import { checkTiles } from "./check-tiles.js";
import { printSketch } from "./print-sketch.js";
import { randomRoom } from "./random-room.js";
import { withWishes } from "./random-wishes.js";
import { ALONE } from "./solve-text.js";
import { validate } from "./validate.js";

/** What a worker has to say of its share. */
export interface TakenRooms {
  readonly rooms: number;
  /** Rooms in whose text the language found no error. */
  readonly clean: number;
  readonly faults: readonly string[];
  /** Their seeds. */
  readonly overSecond: readonly number[];
  readonly slowest: { readonly seed: number; readonly ms: number };
}

/** The processor's time that one room may take from text to picture on a machine that is busy with other things. */
const MOST_MS = 3000;
/** What it should take; rooms over it are counted. */
const WANTED_MS = 1000;
/** So many faults are enough to tell. */
const MOST_FAULTS = 10;

const [from, to] = process.argv.slice(2, 4).map(Number);
const isWished = process.argv[4] === "wished";
const faults: string[] = [];
const overSecond: number[] = [];
let [clean, slowest, seed] = [0, { seed: -1, ms: 0 }, from!];
for (; seed < to! && faults.length < MOST_FAULTS; seed++) takeRoom(seed);
const taken: TakenRooms = { rooms: seed - from!, clean, faults, overSecond, slowest };
process.send?.(taken);

function takeRoom(of: number): void {
  const text = printSketch(
    isWished ? withWishes(randomRoom(of), of) : randomRoom(of),
    of % 2 === 0 ? "mm" : "inch",
  );
  const blame = (words: string) => faults.push(`seed ${of}: ${words}\n${text}`);
  try {
    const first = timed(text);
    // The machine may have been busy with collecting: a room is slow only if it is slow again.
    const ms = first.ms > WANTED_MS ? timed(text).ms : first.ms;
    // How long wishes may take is no law yet: rooms over a second are told.
    if (ms > MOST_MS && !isWished) blame(`took ${Math.round(ms)} ms`);
    if (ms > WANTED_MS) overSecond.push(of);
    if (ms > slowest.ms) slowest = { seed: of, ms };
    const { solved, diagnostics } = first.outcome;
    if (!diagnostics.some(({ code, severity }) => code.startsWith("plan/") && severity === "error"))
      clean++;
    validate(solved);
    solved.walls.forEach(checkLays);
    checkTiles(solved, takeoff(solved), "its tiles");
    drawHeadless(buildRoomScene(solved));
  } catch (error) {
    blame(error instanceof Error ? error.stack! : String(error));
  }
}

/** From text to picture, and the processor's time in milliseconds. */
function timed(text: string) {
  const before = process.cpuUsage();
  const outcome = run(text, ALONE);
  drawHeadless(outcome.scene());
  const { user, system } = process.cpuUsage(before);
  return { outcome, ms: (user + system) / 1000 };
}

import assert from "node:assert/strict";
import { takeInShares } from "../support/take-in-shares.js";
import type { TakenRooms } from "../support/take-random-rooms.js";

/** `GAUGELATH_ROOMS=10000 npx mocha test/properties/random-rooms.test.ts` takes more, `GAUGELATH_ROOMS_FROM` others. */
const ROOMS = Number(process.env.GAUGELATH_ROOMS ?? 200);
const FROM = Number(process.env.GAUGELATH_ROOMS_FROM ?? 0);
/** Wishes take longer: one in five as many. */
const WISHED = Math.ceil(ROOMS / 5);

describe(`${ROOMS} random rooms`, () => {
  it("are solved, checked, drawn and taken off: no crash, no overlap, nothing outside, none over three seconds", async () => {
    await takeAll(ROOMS, "plain");
  }).timeout(Math.max(600_000, 5000 * ROOMS));
});

describe(`${WISHED} random rooms with wishes, lays and places left to them`, () => {
  it("are so too: no crash, no overlap, nothing outside", async () => {
    await takeAll(WISHED, "wished");
  }).timeout(Math.max(600_000, 20_000 * WISHED));
});

async function takeAll(rooms: number, kind: "plain" | "wished"): Promise<void> {
  const seeds = { from: FROM, many: rooms };
  const taken = await takeInShares<TakenRooms>("take-random-rooms.ts", seeds, kind);
  if (process.env.GAUGELATH_ROOMS) tell(taken);
  assert.deepEqual(
    taken.flatMap(({ faults }) => faults),
    [],
  );
  assert.equal(
    sumOver(taken, (share) => share.rooms),
    rooms,
  );
  const clean = sumOver(taken, (share) => share.clean);
  assert.ok(clean > 0.98 * rooms, `${clean} of ${rooms} without an error in the text`);
}

/** Says how the rooms went, whether or not something was wrong with any. */
function tell(taken: readonly TakenRooms[]): void {
  const over = taken.flatMap((share) => share.overSecond);
  const slowest = taken.map((share) => share.slowest).reduce((a, b) => (b.ms > a.ms ? b : a));
  const [rooms, clean] = [
    sumOver(taken, (share) => share.rooms),
    sumOver(taken, (share) => share.clean),
  ];
  console.log(`      ${rooms} taken, ${clean} clean`);
  console.log(`      over a second: ${over.length} (${over.join(", ")})`);
  console.log(`      slowest: seed ${slowest.seed}, ${Math.round(slowest.ms)} ms`);
}

function sumOver(taken: readonly TakenRooms[], of: (share: TakenRooms) => number): number {
  return taken.reduce((all, share) => all + of(share), 0);
}

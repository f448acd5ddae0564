import type { Tile, Trim } from "../model/index.js";
import { type MaterialsToBuy, materialsToBuy, waterOf } from "../sheets/index.js";
import type { SolvedPlan } from "../solver/index.js";
import { takeoff, type Takeoff } from "../takeoff/index.js";
import type { Change, MaterialQuantity, Pair, PieceQuantity, Quantity } from "./comparison.js";

/** Twice the square nanometres of a square millimetre. */
const DOUBLED_MM2 = 2n * 10n ** 12n;

/** What is bought of each tile, trim and material, before and after. */
export function quantitiesOf(
  before: SolvedPlan,
  after: SolvedPlan,
  tiles: readonly Change<Tile>[],
  trims: readonly Change<Trim>[],
): Quantity[] {
  // A plan without a tub or pan has nothing to keep water from.
  const isWet = waterOf(before.plan).wet || waterOf(after.plan).wet;
  const taken = { before: takeoff(before), after: takeoff(after) };
  return [
    ...tiles.map((tile) => tileQuantity(taken, tile)),
    ...trims.map((trim) => trimQuantity(taken, trim)),
    ...materialQuantities({
      before: materialsToBuy(before.plan, taken.before.materials),
      after: materialsToBuy(after.plan, taken.after.materials),
    }).filter(({ kind }) => kind !== "membrane" || isWet),
  ];
}

function tileQuantity(taken: Pair<Takeoff>, { before, after }: Change<Tile>): PieceQuantity {
  const of = ({ tiles }: Takeoff, tile: Tile | null) =>
    tiles.find((each) => each.tile.name === tile?.name);
  const [old, now] = [of(taken.before, before), of(taken.after, after)];
  return {
    kind: "tile",
    name: namesOf(before, after),
    pieces: { before: old?.needed ?? 0, after: now?.needed ?? 0 },
    boxes: { before: old?.boxes?.count ?? null, after: now?.boxes?.count ?? null },
  };
}

function trimQuantity(taken: Pair<Takeoff>, { before, after }: Change<Trim>): PieceQuantity {
  const of = ({ trims }: Takeoff, trim: Trim | null) =>
    trims.find((each) => each.trim.name === trim?.name)?.bought ?? 0;
  return {
    kind: "trim",
    name: namesOf(before, after),
    pieces: { before: of(taken.before, before), after: of(taken.after, after) },
    boxes: { before: null, after: null },
  };
}

function materialQuantities({ before, after }: Pair<MaterialsToBuy>): MaterialQuantity[] {
  const both = <T>(of: (materials: MaterialsToBuy) => T) => ({
    before: of(before),
    after: of(after),
  });
  return [
    {
      kind: "mortar",
      of: "area",
      amount: both(({ mortar }) => squareMillimetres(mortar.doubleArea)),
      pack: "bag",
      packs: both(({ mortar }) => mortar.bags.count),
    },
    {
      kind: "grout",
      of: "volume",
      amount: both(({ grout }) => grout.volume),
      pack: "bag",
      packs: both(({ grout }) => grout.bags.count),
    },
    {
      kind: "sealant",
      of: "volume",
      amount: both(({ sealant }) => sealant.volume),
      pack: "tube",
      packs: both(({ sealant }) => sealant.tubes.count),
    },
    {
      kind: "membrane",
      of: "area",
      amount: both(({ membrane }) => squareMillimetres(membrane.doubleArea)),
      pack: null,
      packs: { before: null, after: null },
    },
  ];
}

/** Rounded up, so that no material is told short. */
function squareMillimetres(doubled: bigint): number {
  return Number((doubled + DOUBLED_MM2 - 1n) / DOUBLED_MM2);
}

function namesOf(before: Tile | Trim | null, after: Tile | Trim | null): Change<string> {
  return { before: before?.name ?? null, after: after?.name ?? null };
}

import { plainText } from "../../drawing/index.js";
import { counted, type Unit } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
import type { Takeoff, TilesToCome, TileTakeoff, TrimTakeoff } from "../../takeoff/index.js";
import { waterOf } from "../setting-out/water.js";
import { areaWords, massWords, runWords, volumeWords } from "./amounts.js";
import { type Bought, materialsToBuy, type MaterialsToBuy } from "./materials-to-buy.js";

/** One thing to buy. */
export interface Purchase {
  readonly kind: "tile" | "trim" | "mortar" | "grout" | "sealant" | "membrane";
  /** What it is called in the plan; empty where the plan doesn't name it. */
  readonly title: string;
  readonly lot: string | null;
  /** null where the plan doesn't say how it is sold: then the amount says it. */
  readonly count: number | null;
  readonly unit: "box" | "piece" | "bag" | "tube" | null;
  /** How much is needed, in words: `183 tiles`, `52.4 cu in (0.86 l)`. */
  readonly amount: string;
  /** How that comes about. */
  readonly why: string;
  /** Hundredths of the plan's own money; null where the plan gives no price. */
  readonly cost: number | null;
}

/** The shopping list, tile first. Nothing is on it that the plan has no use for. */
export function purchasesOf(plan: Plan, takeoff: Takeoff): Purchase[] {
  return [
    ...takeoff.tiles.map(tilePurchase),
    ...takeoff.trims.map((trim) => trimPurchase(plan, trim)),
    ...materialPurchases(plan, materialsToBuy(plan, takeoff.materials)),
  ];
}

function tilePurchase(taken: TileTakeoff): Purchase {
  const { tile, needed, toCome } = taken;
  const { boxes, bought, cost } = toCome ?? taken;
  return {
    kind: "tile",
    title: plainText(tile.title) || plainText(tile.name),
    lot: tile.lot,
    count: boxes?.count ?? bought,
    unit: boxes ? "box" : "piece",
    amount: toCome
      ? `${counted(toCome.needed, "tile")} still to come, of ${needed}`
      : counted(needed, "tile"),
    why: tileWhy(taken),
    cost: cost?.hundredths ?? null,
  };
}

function tileWhy(taken: TileTakeoff): string {
  const { whole, cut, toCome } = taken;
  const { breakage, spares, boxes } = toCome ?? taken;
  const pieces = cut.reduce((count, tile) => count + tile.pieces.length, 0);
  return [
    `${whole} whole`,
    `${cut.length} cut up into ${counted(pieces, "piece")}`,
    ...(toCome ? [`${counted(toCome.used, "tile")} used already`] : []),
    ...(toCome && toCome.fromUsed > 0 ? [fromUsedWords(toCome)] : []),
    ...(breakage > 0 ? [`${breakage} for breakage`] : []),
    ...(spares > 0 ? [`${counted(spares, "spare")} of the same lot`] : []),
    ...(boxes
      ? [`${counted(boxes.count, "box", "boxes")} of ${boxes.of}, ${boxes.over} over`]
      : []),
  ].join("; ");
}

/** Offcuts are often thrown away at the end of a day: then their pieces take tiles of their own. */
export function fromUsedWords({ fromUsed }: TilesToCome): string {
  return (
    `${counted(fromUsed, "piece")} still to cut ${fromUsed === 1 ? "comes" : "come"} from what is left of used tiles: ` +
    `up to ${counted(fromUsed, "tile")} more if that wasn't kept`
  );
}

function trimPurchase(
  { units }: Plan,
  { trim, bought, length, pieces, cost }: TrimTakeoff,
): Purchase {
  const whole = pieces.filter((cut) => cut.whole).reduce((sum, cut) => sum + cut.count, 0);
  const cut = pieces.filter((each) => !each.whole).reduce((sum, each) => sum + each.count, 0);
  return {
    kind: "trim",
    title: plainText(trim.title) || plainText(trim.name),
    lot: trim.lot,
    count: bought,
    unit: "piece",
    amount: counted(bought, "piece"),
    why: `${runWords(length, units)} in all: ${whole} whole, ${cut} cut`,
    cost: cost?.hundredths ?? null,
  };
}

function materialPurchases(plan: Plan, materials: MaterialsToBuy): Purchase[] {
  const { units, mortar, grout, sealant } = plan;
  const { mortar: all, grout: joints, sealant: soft } = materials;
  const bed = all.toCome ?? all;
  const membrane = materials.membrane.toCome ?? materials.membrane;
  const groutMass = joints.mass === null ? "" : `, ${massWords(joints.mass, units)}`;
  return [
    ...some(bed.doubleArea > 0n, {
      kind: "mortar",
      title: plainText(mortar?.title ?? ""),
      ...counts(bed.bags, "bag"),
      amount: `${areaWords(bed.doubleArea, units)} to set${all.toCome ? `, of ${areaWords(all.doubleArea, units)}` : ""}`,
      why: `bed as embedded: ${volumeWords(bed.volume, units)}${unsaid(bed.bags, "what a bag covers")}`,
    }),
    ...some(joints.volume > 0, {
      kind: "grout",
      title: plainText(grout?.title ?? ""),
      ...counts(joints.bags, "bag"),
      amount: volumeWords(joints.volume, units) + groutMass,
      why: `the joints' exact volume, nothing added${unsaid(joints.bags, joints.mass === null ? "its density" : "what a bag holds")}`,
    }),
    ...some(soft.volume > 0, {
      kind: "sealant",
      title: plainText(sealant?.title ?? ""),
      ...counts(soft.tubes, "tube"),
      amount: volumeWords(soft.volume, units),
      why: `${runWords(soft.length, units)} of soft joint${unsaid(soft.tubes, "what a tube holds")}`,
    }),
    // A plan without a tub or pan has nothing to keep water from.
    ...some(waterOf(plan).wet && membrane.doubleArea > 0n, {
      kind: "membrane",
      title: "",
      count: null,
      unit: null,
      cost: null,
      amount: `${areaWords(membrane.doubleArea, units)}${materials.membrane.toCome ? `, of ${areaWords(materials.membrane.doubleArea, units)}` : ""}`,
      why: membraneWhy(plan, membrane, units),
    }),
  ];
}

/** The sides of a niche are told apart where they are in the figure, and asked for where they aren't. */
function membraneWhy(
  { walls }: Plan,
  { doubleNicheSides }: Pick<MaterialsToBuy["membrane"], "doubleNicheSides">,
  units: Unit,
): string {
  const areUnknown = walls
    .filter(({ lays }) => lays.length > 0)
    .some(({ openings }) => openings.some(({ kind, inside }) => kind === "niche" && !inside));
  if (doubleNicheSides === 0n) {
    return "bare wall less windows and doors; add a niche's sides, laps and upstands as its maker says";
  }
  const sides = `with ${areaWords(doubleNicheSides, units)} of niches' sides`;
  const more = areUnknown ? "the sides of niches without a stated depth, laps" : "laps";
  return `bare wall less windows and doors, ${sides}; add ${more} and upstands as its maker says`;
}

function some(any: boolean, purchase: Omit<Purchase, "lot">): Purchase[] {
  return any ? [{ ...purchase, lot: null }] : [];
}

function counts(
  { count, cost }: Bought,
  unit: "bag" | "tube",
): Pick<Purchase, "count" | "unit" | "cost"> {
  return { count, unit: count === null ? null : unit, cost };
}

function unsaid({ count }: Bought, what: string): string {
  return count === null ? `; the plan doesn't say ${what}` : "";
}

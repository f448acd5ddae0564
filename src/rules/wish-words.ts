import { exactLength, formatLength, type Unit } from "../measure/index.js";
import type { Wish } from "../model/index.js";
import { type Measured, type Score, type WishOutcome, worseIn } from "../solver/index.js";

/** A wish as the plan would state it: `whole courses at sill of sash`. */
export function wishWords({ wanted }: Wish, units: Unit): string {
  switch (wanted.kind) {
    case "courses-meet":
      return "courses meet";
    case "bond-goes-on":
      return "bond goes on";
    case "centre":
      return `centre on ${wanted.on.opening}`;
    case "no-cut":
      return `no cut under ${exactLength(wanted.under, units)}`;
    case "whole-at-opening":
      return `whole courses at ${wanted.at} of ${wanted.of.opening}`;
    case "whole-at-side":
      return `whole courses at ${wanted.at}`;
    case "equal-ends":
      return "equal ends";
    case "few-cuts":
      return "few cuts";
  }
}

/** How far a wish is missed: `1/8 in off`, `3 cuts under it`. */
export function missWords({ wanted }: Wish, missed: number, units: Unit): string {
  switch (wanted.kind) {
    case "no-cut":
      return `${missed} ${missed === 1 ? "cut" : "cuts"} under it`;
    case "few-cuts":
      return `${missed} ${missed === 1 ? "cut" : "cuts"}`;
    case "equal-ends":
      return `${lengthOver(missed, units)} apart in all`;
    case "courses-meet":
    case "bond-goes-on":
      return `${lengthOver(missed, units)} off in all`;
    default:
      return `${lengthOver(missed, units)} off`;
  }
}

/** Whether a wish is met, or as nearly as it can be. */
export function isMet({ wish: { wanted }, missed, nearest }: WishOutcome): boolean {
  return missed === 0 || (wanted.kind === "few-cuts" && nearest === null);
}

/**
 * What it would take to meet a wish that isn't met: `met, it would cost 3 more slivers`, or that it can't be met.
 * `own` is the layout as it is.
 */
export function priceWords(
  { wish, nearest }: WishOutcome,
  own: Measured,
  wishes: readonly Wish[],
  units: Unit,
): string {
  if (!nearest) return "no layout was found that comes nearer";
  const left = nearest.misses[wishes.indexOf(wish)]!;
  const price = lossWords(nearest, own, wishes, units);
  if (wish.wanted.kind === "few-cuts") return `${missWords(wish, left, units)} would cost ${price}`;
  if (left === 0) return `met, it would cost ${price}`;
  return `it can't be met: at best ${missWords(wish, left, units)}, which would cost ${price}`;
}

/** What is lost by a layout against another: the wishes that it misses by more, and the first measure that is worse. */
export function lossWords(
  layout: Measured,
  than: Measured,
  wishes: readonly Wish[],
  units: Unit,
): string {
  const worse = worseIn(layout, than);
  const missed = worse.wishes.map((i) => {
    const wish = wishes[i]!;
    return `\`${wishWords(wish, units)}\` (${missWords(wish, layout.misses[i]!, units)})`;
  });
  const [measure] = worse.measures;
  const more = measure ? layout.score[measure] - than.score[measure] : 0;
  const lost = [...missed, ...(measure ? [moreWords(measure, more, units)] : [])];
  return lost.length === 0 ? "nothing" : lost.join(", ");
}

const MORE: Readonly<Record<keyof Score, readonly [string, string]>> = {
  slivers: ["more sliver", "more slivers"],
  underHalf: ["more cut under half", "more cuts under half"],
  imbalance: ["more out of balance", "more out of balance"],
  cuts: ["more cut", "more cuts"],
  tiles: ["more tile", "more tiles"],
  jointOver: ["wider joints in all", "wider joints in all"],
};

function moreWords(measure: keyof Score, more: number, units: Unit): string {
  const isLength = measure === "imbalance" || measure === "jointOver";
  const figure = isLength ? lengthOver(more, units) : `${more}`;
  return `${figure} ${MORE[measure][more === 1 ? 0 : 1]}`;
}

/** A length over nothing, also where it reads as none. */
function lengthOver(nm: number, units: Unit): string {
  const shown = formatLength(nm, units);
  return nm > 0 && shown === formatLength(0, units) ? `just over ${shown}` : shown;
}

import { type AmountKind, formatMoney } from "../measure/index.js";
import type { Money, Share, Supplies, Tile } from "../model/index.js";
import type { Fact, Subject, SupplyName, Value } from "./comparison.js";
import { count, factOf, length, size, words } from "./facts-of.js";

/** What changed of how a tile is bought, and of whether it may be turned. */
export function boughtFacts(of: Subject, before: Tile, after: Tile): Fact[] {
  return [
    ...factOf(of, "box", count(before.box), count(after.box)),
    ...factOf(of, "direction", directionOf(before), directionOf(after)),
    ...factOf(of, "lot", words(before.lot), words(after.lot)),
    ...factOf(of, "price", tilePriceOf(before), tilePriceOf(after)),
    ...factOf(of, "breakage", percentOf(before.breakage), percentOf(after.breakage)),
    ...factOf(of, "spares", count(before.spares), count(after.spares)),
  ];
}

function directionOf({ directional }: Tile): Value {
  return words(directional ? "may not be turned" : "may be turned");
}

function tilePriceOf({ price }: Tile): Value | null {
  return price && priceOf(price.hundredths, price.per);
}

/** `42.50 a box`. */
export function priceOf(money: Money | null, per: string): Value | null {
  return money === null ? null : words(`${formatMoney(money)} a ${per}`);
}

function percentOf(share: Share | null): Value | null {
  return share && words(`${(100 * share.p) / share.q}%`);
}

/** What changed of saw, mortar, grout and sealant, fact by fact. */
export function supplyFacts(before: Supplies, after: Supplies): Fact[] {
  const [was, is] = [factsOf(before), factsOf(after)];
  return was.flatMap(([supply, which, value], i) =>
    factOf({ of: "plan" }, supply, value, is[i]![2], which),
  );
}

/** Every fact of the supplies in one order, whether it is stated or not. */
function factsOf({
  saw,
  mortar,
  grout,
  sealant,
}: Supplies): (readonly [SupplyName, string, Value | null])[] {
  const notch = mortar?.notch ?? null;
  return [
    ["saw", "kerf", length(saw?.kerf ?? null)],
    ["saw", "rip", length(saw?.longest ?? null)],
    ["mortar", "title", titleOf(mortar)],
    ["mortar", "notch", notch && size(notch.width, notch.depth)],
    ["mortar", "bag", amount(mortar?.bag?.mass, "mass")],
    ["mortar", "bag covers", amount(mortar?.bag?.covers, "area")],
    ["mortar", "back-butter", length(mortar?.backButter ?? null)],
    ["mortar", "price", priceOf(mortar?.price ?? null, "bag")],
    ["grout", "title", titleOf(grout)],
    ["grout", "density", densityOf(grout?.density ?? null)],
    ["grout", "bag", amount(grout?.bag?.mass, "mass")],
    ["grout", "price", priceOf(grout?.price ?? null, "bag")],
    ["sealant", "title", titleOf(sealant)],
    ["sealant", "tube", amount(sealant?.tube, "volume")],
    ["sealant", "depth", length(sealant?.depth ?? null)],
    ["sealant", "price", priceOf(sealant?.price ?? null, "tube")],
  ];
}

function titleOf(supply: { readonly title: string } | null): Value | null {
  return supply && supply.title !== "" ? words(JSON.stringify(supply.title)) : null;
}

function amount(whole: number | null | undefined, of: AmountKind): Value | null {
  return whole == null ? null : { kind: "amount", of, whole };
}

/** Grams a litre as they are written, in g/cm³. */
function densityOf(density: number | null): Value | null {
  return density === null ? null : words(`${density / 1_000} g/cm³`);
}

import type { AmountKind } from "./amount.js";
import { AMOUNT_UNITS } from "./amount.js";
import type { Fraction } from "./fraction.js";
import { divide, fraction, multiply, roundToWhole } from "./fraction.js";
import type { Unit } from "./nanometre.js";

/** How each kind is shown to people who measure in inches and in metres: unit, its words, decimals. */
const SHOWN: Readonly<
  Record<AmountKind, Readonly<Record<"imperial" | "metric", readonly [string, string, number]>>>
> = {
  mass: { imperial: ["lb", "lb", 1], metric: ["kg", "kg", 2] },
  volume: { imperial: ["floz", "fl oz", 1], metric: ["l", "l", 2] },
  area: { imperial: ["sqft", "sq ft", 1], metric: ["m2", "m²", 2] },
};

/**
 * Milligrams, mm³ or mm² for people: `25 lb`, `10.1 fl oz`, `40 sq ft` where a plan's unit is the inch or the
 * foot, else `11.34 kg`, `0.3 l`, `3.72 m²`. Rounded to a tenth, or a hundredth.
 */
export function formatAmount(whole: number | bigint, kind: AmountKind, unit: Unit): string {
  const [name, words, places] = SHOWN[kind][isImperial(unit) ? "imperial" : "metric"];
  const shown = divide(fraction(BigInt(whole)), AMOUNT_UNITS[kind].get(name)!);
  return `${decimal(shown, places)} ${words}`;
}

function isImperial(unit: Unit): boolean {
  return unit === "inch" || unit === "foot";
}

/** A fraction of zero or more as a decimal without needless zeros. */
function decimal(amount: Fraction, places: number): string {
  const steps = 10n ** BigInt(places);
  const rounded = roundToWhole(multiply(amount, fraction(steps)));
  const rest = `${rounded % steps}`.padStart(places, "0").replace(/0+$/, "");
  return rest === "" ? `${rounded / steps}` : `${rounded / steps}.${rest}`;
}

/** Hundredths as money is written: `42.50`. No currency is told, since the plan names none. */
export function formatMoney(hundredths: number): string {
  return (hundredths / 100).toFixed(2);
}

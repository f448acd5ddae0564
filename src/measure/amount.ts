import type { Fraction } from "./fraction.js";
import { fraction, multiply, roundToWhole } from "./fraction.js";
import type { LengthProblem } from "./read-length.js";
import { readQuantity } from "./read-length.js";

/** What stock is measured in besides lengths. */
export type AmountKind = "mass" | "volume" | "area";

/**
 * The units of each kind, and how many milligrams, cubic or square millimetres one holds, all exact: a pound is
 * 453.59237 g, a US fluid ounce 29.5735295625 ml, a foot 304.8 mm (NIST Handbook 44, Appendix C).
 */
export const AMOUNT_UNITS: Readonly<Record<AmountKind, ReadonlyMap<string, Fraction>>> = {
  mass: new Map([
    ["lb", fraction(45_359_237n, 100n)],
    ["oz", fraction(45_359_237n, 1_600n)],
    ["kg", fraction(1_000_000n)],
    ["g", fraction(1_000n)],
  ]),
  volume: new Map([
    ["floz", fraction(295_735_295_625n, 10_000_000n)],
    ["ml", fraction(1_000n)],
    ["l", fraction(1_000_000n)],
  ]),
  area: new Map([
    ["sqft", fraction(9_290_304n, 100n)],
    ["m2", fraction(1_000_000n)],
  ]),
};

/** A number as written, with the unit that stands right behind it, if any, and that unit's place in the text. */
export interface WrittenNumber {
  readonly number: Fraction;
  readonly unit: { readonly text: string; readonly start: number; readonly end: number } | null;
}

export type NumberReading =
  ({ readonly ok: true } & WrittenNumber) | { readonly ok: false; readonly problem: LengthProblem };

/** Reads `50`, `50lb`, `12 1/2` or `10.1floz`, without a sign; which units there are is not its concern. */
export function readNumber(text: string): NumberReading {
  const written = /[A-Za-z_'"][A-Za-z0-9_]*$/.exec(text)?.[0] ?? "";
  const end = text.length - written.length;
  const reading = readQuantity(text.slice(0, end).trimEnd());
  if (!reading.ok) return reading;
  const { amount: number, unit } = reading.quantity;
  // Feet before inches, as in 1' 6, are a length.
  if (unit !== null) return { ok: false, problem: { message: NO_NUMBER, start: 0, end } };
  return {
    ok: true,
    number,
    unit: written === "" ? null : { text: written, start: end, end: text.length },
  };
}

const NO_NUMBER = "found a length, wanted a plain number";

/** Past this nothing is a bag, a tube or a wall: a tonne, a thousand cubic metres, a square kilometre. */
const LARGEST = 1_000_000_000_000;

/** Whole milligrams, mm³ or mm², halves away from zero; null for no unit of the kind, or past any bag. */
export function toWhole(number: Fraction, kind: AmountKind, unit: string): number | null {
  const perUnit = AMOUNT_UNITS[kind].get(unit);
  if (!perUnit) return null;
  const whole = Number(roundToWhole(multiply(number, perUnit)));
  return Math.abs(whole) <= LARGEST ? whole : null;
}

/** Whole hundredths of a decimal with two places at most, such as `42.50`; null for anything else. */
export function readMoney(text: string): number | null {
  const [, whole, places = ""] = /^(\d{1,9})(?:\.(\d{1,2}))?$/.exec(text) ?? [];
  return whole === undefined ? null : Number(whole) * 100 + Number(places.padEnd(2, "0"));
}

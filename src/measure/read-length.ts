import type { Fraction } from "./fraction.js";
import { add, fraction, multiply, roundToWhole } from "./fraction.js";
import { LITERAL_PARTS, UNIT_WORDS } from "./literal.js";
import type { Nm, Unit } from "./nanometre.js";
import { LONGEST, NM_PER } from "./nanometre.js";

/** A literal as written: so many of a unit, or a bare number that takes the plan's unit. */
export interface Quantity {
  readonly amount: Fraction;
  readonly unit: Unit | null;
}

/** Why a literal can't be read, and the part of it that is wrong (`end` is just past it). */
export interface LengthProblem {
  readonly message: string;
  readonly start: number;
  readonly end: number;
}

export type QuantityReading =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly problem: LengthProblem };

export type LengthReading =
  { readonly ok: true; readonly nm: Nm } | { readonly ok: false; readonly problem: LengthProblem };

/** More digits than the longest length has nanometres are no measurement. */
const MOST_DIGITS = 30;

/** Thrown inside this file only, and caught at its doors. */
class Unreadable extends Error {
  constructor(
    message: string,
    readonly start: number,
    readonly end: number,
  ) {
    super(message);
  }
}

/** Reads one literal without a sign; see `LENGTH_LITERAL` for the forms. */
export function readQuantity(text: string): QuantityReading {
  try {
    return { ok: true, quantity: quantityOf(text) };
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    const { message, start, end } = error;
    return { ok: false, problem: { message, start, end } };
  }
}

/** Reads one literal without a sign as whole nanometres; a bare number is in `unit`. Rounds once. */
export function readLength(text: string, unit: Unit): LengthReading {
  const reading = readQuantity(text);
  if (!reading.ok) return reading;
  const nm = toNanometres(reading.quantity, unit);
  if (nm !== null) return { ok: true, nm };
  return { ok: false, problem: { message: tooLong(text), start: 0, end: text.length } };
}

/** Whole nanometres, halves away from zero; null past `LONGEST`. A bare number is in `unit`. */
export function toNanometres(quantity: Quantity, unit: Unit): Nm | null {
  const perUnit = fraction(BigInt(NM_PER[quantity.unit ?? unit]));
  const nm = Number(roundToWhole(multiply(quantity.amount, perUnit)));
  return Math.abs(nm) <= LONGEST ? nm : null;
}

function quantityOf(text: string): Quantity {
  const parts = LITERAL_PARTS.exec(text);
  if (!parts) {
    throw new Unreadable(
      `found ${quoted(text)}, wanted a length such as 5 7/8, 2.5 or 300mm`,
      0,
      text.length,
    );
  }
  const [, feet, feetMark = "", gap = "", rest = "", unitWord] = parts;
  const restAt = text.length - rest.length - (unitWord?.length ?? 0);
  const unitAt = text.length - (unitWord?.length ?? 0);
  const amount = readAmount(rest, restAt);
  const unit = unitWord === undefined ? null : readUnit(unitWord, unitAt);
  if (feet === undefined) return { amount, unit };

  const whole = readAmount(feet, 0);
  if (!/^\d+$/.test(feet)) {
    throw new Unreadable(
      `found ${quoted(feet + feetMark)} before inches, wanted whole feet, as in 1' 6 1/2"`,
      0,
      feet.length,
    );
  }
  if (unit !== "inch") {
    const found = rest + (unitWord ?? "");
    throw new Unreadable(
      `found ${quoted(found)} after feet, wanted inches with their mark, as in 1' 6"`,
      feet.length + feetMark.length + gap.length,
      text.length,
    );
  }
  if (amount.numerator >= 12n * amount.denominator) {
    throw new Unreadable(
      `found ${quoted(rest)} inches after feet, wanted less than 12`,
      restAt,
      text.length,
    );
  }
  return { amount: add(multiply(whole, fraction(12n)), amount), unit };
}

function readUnit(word: string, at: number): Unit {
  const trimmed = word.trim();
  const unit = Object.hasOwn(UNIT_WORDS, trimmed) ? UNIT_WORDS[trimmed] : undefined;
  if (unit !== undefined) return unit;
  const lower = trimmed.toLowerCase();
  const hint = Object.hasOwn(UNIT_WORDS, lower) ? `; did you mean ${quoted(lower)}?` : "";
  throw new Unreadable(
    `found the unit ${quoted(trimmed)}, wanted in, ft, mm, cm or m${hint}`,
    at,
    at + word.length,
  );
}

/** `5 7/8`, `5-7/8`, `7/8` or `2.5`; `at` is its place in the literal. */
function readAmount(text: string, at: number): Fraction {
  const [, whole, gap = "", over, under] =
    /^(?:([\d.]+)([ \t]+|-))?([\d.]+)\/(\d+)$/.exec(text) ?? [];
  if (over === undefined || under === undefined) return readDecimal(text, at);
  const overAt = at + (whole?.length ?? 0) + gap.length;
  const part = `${over}/${under}`;
  if (over.includes(".")) {
    throw new Unreadable(
      `found ${quoted(part)}, wanted a fraction of whole numbers (a division has spaces round its slash)`,
      overAt,
      at + text.length,
    );
  }
  const bottom = readDigits(under, at + text.length - under.length);
  if (bottom === 0n) {
    throw new Unreadable(
      `found ${quoted(part)}, wanted a fraction over something other than zero`,
      overAt,
      at + text.length,
    );
  }
  const value = fraction(readDigits(over, overAt), bottom);
  if (whole === undefined) return value;
  if (whole.includes(".")) {
    throw new Unreadable(
      `found ${quoted(whole)} before a fraction, wanted a whole number`,
      at,
      at + whole.length,
    );
  }
  if (value.numerator >= value.denominator) {
    throw new Unreadable(
      `found ${quoted(part)} after a whole number, wanted a fraction under one`,
      overAt,
      at + text.length,
    );
  }
  return add(fraction(readDigits(whole, at)), value);
}

function readDecimal(text: string, at: number): Fraction {
  const [whole = "", decimals] = text.split(".");
  if (decimals === undefined) return fraction(readDigits(whole, at));
  if (decimals === "") {
    throw new Unreadable(
      `found ${quoted(text)}, wanted digits after the point`,
      at,
      at + text.length,
    );
  }
  return fraction(readDigits(whole + decimals, at), 10n ** BigInt(decimals.length));
}

function readDigits(digits: string, at: number): bigint {
  if (digits.length <= MOST_DIGITS) return BigInt(digits);
  throw new Unreadable(
    `found a number of ${digits.length} digits, wanted a length of at most ${LONGEST / NM_PER.m / 1000} km`,
    at,
    at + digits.length,
  );
}

function tooLong(text: string): string {
  return `found ${quoted(text)}, wanted a length of at most ${LONGEST / NM_PER.m / 1000} km`;
}

function quoted(text: string): string {
  return `\`${text}\``;
}

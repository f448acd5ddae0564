import type { AmountKind, Fraction } from "../../measure/index.js";
import {
  AMOUNT_UNITS,
  divide,
  fraction,
  multiply,
  readMoney,
  roundToWhole,
  toWhole,
} from "../../measure/index.js";
import type { Money, Share } from "../../model/index.js";
import { didYouMean } from "../nearest.js";
import type { BreakageStatement, Expression, WrittenAmount, WrittenNumber } from "../syntax.js";
import { joinWords } from "../wanted.js";
import { evaluate } from "./evaluate.js";
import type { PlanCode } from "./plan-code.js";
import { ratioOf } from "./ratio.js";
import type { Scope } from "./scope.js";

/** Whole milligrams, mm³ or mm² of more than zero; null for anything else, which is told. */
export function amountOf(written: WrittenAmount, kind: AmountKind, scope: Scope): number | null {
  const { number, unit } = written;
  if (number === null) return null;
  const known = [...AMOUNT_UNITS[kind].keys()];
  const tell = (at: { start: number; end: number }, message: string): null => {
    scope.report.tell("plan/amount", at, message);
    return null;
  };
  if (!unit) return tell(written, `found a number without a unit, wanted ${joinWords(known)}`);
  if (!known.includes(unit.text)) {
    const guess = didYouMean(unit.text, known);
    return tell(unit, `found the unit \`${unit.text}\`, wanted ${joinWords(known)}${guess}`);
  }
  const whole = toWhole(number, kind, unit.text);
  if (whole === null) return tell(written, "found more than anybody buys, wanted what one holds");
  if (whole > 0) return whole;
  return tell(written, `found ${signed(written)} ${unit.text}, wanted more than zero`);
}

/** Whole hundredths of the plan's money; null for anything else, which is told. */
export function moneyOf(written: WrittenNumber, scope: Scope): Money | null {
  const { number, image } = written;
  if (number === null) return null;
  const money = readMoney(image);
  if (money !== null && number.numerator >= 0n) return money;
  const wanted =
    money === null ? "an amount with two decimals at most, such as 42.50" : "zero or more";
  scope.report.tell("plan/price", written, `found ${signed(written)}, wanted ${wanted}`);
  return null;
}

/** Of the pieces that are needed; from none to all of them. */
export function breakageOf(
  { percent }: Pick<BreakageStatement, "percent">,
  scope: Scope,
): Share | null {
  const { number } = percent;
  if (number === null) return null;
  const share = divide(number, fraction(100n));
  const { numerator, denominator } = share;
  const ratio = numerator >= 0n && numerator <= denominator ? ratioOf(share) : null;
  if (ratio) return ratio;
  const message = `found ${signed(percent)}%, wanted from 0% to 100%, such as 3%`;
  scope.report.tell("plan/breakage", percent, message);
  return null;
}

/** Heavier than this in kg a litre nobody grouts with. */
const HEAVIEST: Fraction = fraction(10n);
const GRAMS_PER_KILOGRAM = fraction(1_000n);

/** Whole grams a litre of a density in g/cm³. */
export function densityOf(written: WrittenNumber, scope: Scope): number | null {
  const { number } = written;
  if (number === null) return null;
  const density = Number(roundToWhole(multiply(number, GRAMS_PER_KILOGRAM)));
  const most = Number(multiply(HEAVIEST, GRAMS_PER_KILOGRAM).numerator);
  if (density > 0 && density <= most) return density;
  const message = `found ${signed(written)}, wanted grams in a cubic centimetre, such as 1.6`;
  scope.report.tell("plan/amount", written, message);
  return null;
}

const LARGEST_COUNT = 1_000_000n;

/** A whole number of pieces, `least` or more. */
export function countOf(
  expression: Expression,
  least: 0 | 1,
  told: { readonly code: PlanCode; readonly example: number },
  scope: Scope,
): number | null {
  const value = evaluate(expression, scope);
  if (!value) return null;
  const { numerator, denominator } = value.amount;
  const isCount = value.kind !== "length" && denominator === 1n;
  if (isCount && numerator >= BigInt(least) && numerator <= LARGEST_COUNT) return Number(numerator);
  const message = `found no number of pieces, wanted a whole number, such as ${told.example}`;
  scope.report.tell(told.code, expression, message);
  return null;
}

function signed({ number, image }: WrittenNumber): string {
  return `${number !== null && number.numerator < 0n ? "-" : ""}${image.replace(/[A-Za-z_].*$/, "")}`;
}

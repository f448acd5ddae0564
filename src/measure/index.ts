export type { AmountKind, NumberReading, WrittenNumber } from "./amount.js";
export type { Fraction } from "./fraction.js";
export type { Nm, Unit } from "./nanometre.js";
export type { LengthProblem, LengthReading, Quantity, QuantityReading } from "./read-length.js";
export { rootRaised, rootRounded } from "./root.js";
export { divideRounded, LONGEST, NM_PER, scaleRounded, toMillimetres } from "./nanometre.js";
export {
  add,
  divide,
  fraction,
  isUnwieldy,
  multiply,
  negate,
  roundToWhole,
  subtract,
} from "./fraction.js";
export { LENGTH_LITERAL, UNIT_WORDS } from "./literal.js";
export { readLength, readQuantity, toNanometres } from "./read-length.js";
export { formatLength } from "./format-length.js";
export { exactLength } from "./exact-length.js";
export { AMOUNT_UNITS, readMoney, readNumber, toWhole } from "./amount.js";
export { formatAmount, formatMoney } from "./format-amount.js";
export { counted } from "./counted.js";

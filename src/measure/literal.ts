import type { Unit } from "./nanometre.js";

/** The marks and words that may follow a number, and the unit that each means. */
export const UNIT_WORDS: Readonly<Record<string, Unit>> = {
  '"': "inch",
  in: "inch",
  inch: "inch",
  inches: "inch",
  "'": "foot",
  ft: "foot",
  foot: "foot",
  feet: "foot",
  mm: "mm",
  cm: "cm",
  m: "m",
};

// A digit may not be read by two neighbouring parts of a pattern: a long run of digits would
// then take time in the square of its length.
const NUMBER = String.raw`(?:\d+(?:\.\d*)?|\.\d+)`;
const AMOUNT = String.raw`${NUMBER}(?:(?:[ \t]+|-)\d+/\d+|/\d+)?`;
const FEET = String.raw`(?:'|[ \t]*(?:feet|foot|ft)(?![A-Za-z_]))`;
const KNOWN_UNIT = String.raw`['"]|[ \t]*(?:inches|inch|in|feet|foot|ft|mm|cm|m)(?![A-Za-z0-9_])`;
// A word that no unit is called is taken too, so that the message can name it; not the `x` of `60x96`.
const UNIT = String.raw`(?:${KNOWN_UNIT}|(?!x(?![A-Za-z_]))[A-Za-z_][A-Za-z0-9_]*)`;

/**
 * What a text's reader takes for one length literal, well formed or not: `5 7/8`, `5-7/8`, `7/8`,
 * `2.5`, `1' 6 1/2"`, `18"`, `300mm`, `6ft 2in`, and also `5 8/7` or `18furlong`, which
 * `readQuantity` then explains.
 */
export const LENGTH_LITERAL = new RegExp(
  `${AMOUNT}${FEET}(?:[ \t]*|-)${AMOUNT}${UNIT}?|${AMOUNT}${UNIT}?`,
);

/** The parts of a literal: up to two amounts, each with its unit. */
export const LITERAL_PARTS = new RegExp(
  `^(?:(${AMOUNT})(${FEET})([ \t]*|-))?(${AMOUNT})(${UNIT})?$`,
);

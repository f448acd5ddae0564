import type { CstNode } from "chevrotain";
import { negate, readNumber } from "../measure/index.js";
import type { Problems } from "./build-expression.js";
import { nodeAt, spanOf, tokenAt, wordOf } from "./cst.js";
import type { WrittenAmount, WrittenNumber } from "./syntax.js";

/** A `number` node: one with a unit behind it is told, since none is wanted there. */
export function buildNumber(node: CstNode, problems: Problems): WrittenNumber {
  const { unit, ...written } = readToken(node, problems);
  if (!unit) return written;
  const message = `found the unit \`${unit.text}\`, wanted a number without a unit`;
  problems.push({ code: "syntax/number", message, start: unit.start, end: unit.end });
  return { ...written, number: null };
}

/** A `mass`, `volume` or `area` node. Which units there are is looked up later. */
export function buildAmount(node: CstNode, problems: Problems): WrittenAmount {
  const written = readToken(nodeAt(node, "number")!, problems);
  const behind = tokenAt(node, "unit");
  if (!behind) return written;
  const { start } = written;
  const word = wordOf(behind);
  if (!written.unit) return { ...written, unit: word, start, end: word.end };
  const message = `found \`${word.text}\` behind a unit, wanted one unit`;
  problems.push({ code: "syntax/number", message, start: word.start, end: word.end });
  return { ...written, number: null };
}

function readToken(node: CstNode, problems: Problems): WrittenAmount {
  const token = tokenAt(node, "Length")!;
  const { text: image, start: at } = wordOf(token);
  const span = spanOf(node);
  const reading = readNumber(image);
  if (!reading.ok) {
    const { message, start, end } = reading.problem;
    problems.push({ code: "syntax/number", message, start: at + start, end: at + end });
    return { ...span, number: null, image, unit: null };
  }
  const { number, unit } = reading;
  const isNegative = tokenAt(node, "Sign")?.image === "-";
  return {
    ...span,
    number: isNegative ? negate(number) : number,
    image,
    unit: unit && { text: unit.text, start: at + unit.start, end: at + unit.end },
  };
}

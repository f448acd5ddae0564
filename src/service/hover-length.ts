import { formatLength, type Nm, type Unit } from "../measure/index.js";
import type { LetValue } from "../language/index.js";
import { heading, paragraphs } from "./markdown.js";

const SHOWN: readonly Unit[] = ["inch", "foot", "mm", "cm", "m"];

/** A length in the plan's units, then in the others. */
export function hoverLength(nm: Nm, own: Unit): string {
  const others = SHOWN.filter((unit) => unit !== own).map((unit) => formatLength(nm, unit));
  return `**${formatLength(nm, own)}** = ${others.join(" = ")}`;
}

export function hoverLet(name: string, value: LetValue | null, own: Unit): string {
  if (value === null) return paragraphs([heading("let", name), "It can't be worked out."]);
  const words =
    value.kind === "length" ? hoverLength(value.nm, own) : `**${value.value}**, a plain number`;
  return paragraphs([heading("let", name), words]);
}

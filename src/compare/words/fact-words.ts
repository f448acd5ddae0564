import { formatAmount, type Nm } from "../../measure/index.js";
import type { Fact, PartChange, Subject, SupplyName, Value } from "../comparison.js";
import type { Lengths } from "./lengths.js";

/** A part that came, went or was renamed. */
export function partWords({ kind, name }: PartChange): string {
  if (name.before === null) return `${kind} ${name.after!} is new`;
  if (name.after === null) return `${kind} ${name.before} is gone`;
  return `${kind} ${name.before} is now called ${name.after}`;
}

/** What the plan says, or the solver chose, as it was and as it is. */
export function factWords(fact: Fact, lengths: Lengths): string {
  const { subject, name, before, after } = fact;
  if (name === "place" && before?.kind === "place" && after?.kind === "place") {
    const by = { across: after.x - before.x, up: after.y - before.y };
    return `${subjectWords(subject)} moves ${lengths.shift(by)}`;
  }
  if (name === "reading") return readingWords(fact, lengths);
  const missing = MISSING[name] ?? "not stated";
  const [was, is] = [before, after].map((value) =>
    value ? valueWords(fact, value, lengths) : missing,
  );
  return `${factLabel(fact)}: ${was!} -> ${is!}`;
}

function readingWords({ subject, which, before, after }: Fact, lengths: Lengths): string {
  const where = `${subjectWords(subject)} at ${lengths.length(which as Nm)}`;
  const [was, is] = [before, after].map((value) =>
    value?.kind === "length" ? lengths.length(value.nm) : null,
  );
  if (was === null) return `${where}: now measured, ${is!}`;
  if (is === null) return `${where}: no longer measured (was ${was!})`;
  return `${where}: ${was!} -> ${is!}`;
}

function valueWords({ name }: Fact, value: Value, lengths: Lengths): string {
  switch (value.kind) {
    case "length":
      return lengths.length(value.nm);
    case "size":
      return `${lengths.length(value.across)} x ${lengths.length(value.up)}`;
    case "place":
      return `${lengths.length(value.x)}, ${lengths.length(value.y)}`;
    case "count":
      return `${value.count}`;
    case "amount":
      return formatAmount(value.whole, value.of, lengths.units);
    case "words":
      if (name === "title") return JSON.stringify(value.words);
      // The label says the direction already.
      return value.words.replace(/^(across|up) /, "");
  }
}

const MISSING: Readonly<Partial<Record<Fact["name"], string>>> = {
  limit: "as usual",
  frame: "none",
  tile: "none",
  "soft joint": "none",
  joint: "none",
  set: "nothing",
  "set top": "as planned",
};

function subjectWords(subject: Subject): string {
  switch (subject.of) {
    case "plan":
    case "wall":
    case "lay":
      return "";
    case "edge":
      return subject.side;
    default:
      return `${subject.of} ${subject.name.after}`;
  }
}

/** What stands before a fact's colon. */
function factLabel({ subject, name, which }: Fact): string {
  const of = subjectWords(subject);
  if (name === "limit") return `rules, ${which as string}`;
  if (isSupply(name)) return `${name}, ${which as string}`;
  if (name === "title") return `${of || "plan"}, title`;
  if (name === "set top") return "top of what is set, as measured";
  if (of === "") return name;
  // A side is named for what it meets, an opening for its size.
  if (name === "meets" || name === "size") return of;
  return `${of}, ${name}`;
}

function isSupply(name: Fact["name"]): name is SupplyName {
  return name === "saw" || name === "mortar" || name === "grout" || name === "sealant";
}

import { formatAmount, formatLength, type Nm, type Unit } from "../measure/index.js";
import type { Diagnostic, Side } from "../model/index.js";
import { ownVolumeWords } from "../sheets/index.js";
import type {
  Alignment,
  Change,
  CourseShift,
  CutPiece,
  Fact,
  FindingChange,
  MaterialQuantity,
  MovedPieces,
  OnWall,
  Pair,
  PartChange,
  PieceQuantity,
  Quantity,
  Range,
  RecutPieces,
  SeveralPieces,
  Shift,
  Subject,
  SupplyName,
  Value,
  WallReading,
} from "./comparison.js";
import type { Exchange } from "./exchanges.js";

/** What a comparison says, sentence by sentence, in the words of the trade and a plan's units. */
export class Words {
  readonly #units: Unit;

  constructor(units: Unit) {
    this.#units = units;
  }

  /** `courses 1 to 3 would be cut differently, 24 of their pieces: they are on the wall`. */
  onWall({ lay, courses, pieces }: OnWall): string {
    const which = `${courses.length === 1 ? "course" : "courses"} ${numberRuns(courses)}`;
    const whose = lay === null ? "" : ` of ${lay}`;
    const [its, stands] = courses.length === 1 ? ["its", "it is"] : ["their", "they are"];
    return `set ${which}${whose} would be cut differently, ${pieces} of ${its} pieces: ${stands} on the wall`;
  }

  part({ kind, name }: PartChange): string {
    if (name.before === null) return `${kind} ${name.after!} is new`;
    if (name.after === null) return `${kind} ${name.before} is gone`;
    return `${kind} ${name.before} is now called ${name.after}`;
  }

  fact(fact: Fact): string {
    const { subject, name, before, after } = fact;
    if (name === "place" && before?.kind === "place" && after?.kind === "place") {
      const by = { across: after.x - before.x, up: after.y - before.y };
      return `${subjectWords(subject)} moves ${this.shift(by)}`;
    }
    if (name === "reading") return this.#reading(fact);
    const missing = MISSING[name] ?? "not stated";
    const [was, is] = [before, after].map((value) => (value ? this.#value(fact, value) : missing));
    return `${factLabel(fact)}: ${was!} -> ${is!}`;
  }

  #reading({ subject, which, before, after }: Fact): string {
    const where = `${subjectWords(subject)} at ${this.#length(which as Nm)}`;
    const [was, is] = [before, after].map((value) =>
      value?.kind === "length" ? this.#length(value.nm) : null,
    );
    if (was === null) return `${where}: now measured, ${is!}`;
    if (is === null) return `${where}: no longer measured (was ${was!})`;
    return `${where}: ${was!} -> ${is!}`;
  }

  #value({ name }: Fact, value: Value): string {
    switch (value.kind) {
      case "length":
        return this.#length(value.nm);
      case "size":
        return `${this.#length(value.across)} x ${this.#length(value.up)}`;
      case "place":
        return `${this.#length(value.x)}, ${this.#length(value.y)}`;
      case "count":
        return `${value.count}`;
      case "amount":
        return formatAmount(value.whole, value.of, this.#units);
      case "words":
        if (name === "title") return JSON.stringify(value.words);
        // The label says the direction already.
        return value.words.replace(/^(across|up) /, "");
    }
  }

  /** `up 3/8 in`, `right 2 in and down 1 in`. */
  shift({ across, up }: Shift): string {
    const ways = [
      ...(across === 0 ? [] : [`${across > 0 ? "right" : "left"} ${this.#far(across)}`]),
      ...(up === 0 ? [] : [`${up > 0 ? "up" : "down"} ${this.#far(up)}`]),
    ];
    return ways.join(" and ");
  }

  /** `all courses move up 3/8 in`; where they step otherwise, also by how much across. */
  courses({ up, across }: CourseShift): string {
    const [first = 0, ...others] = across;
    if (others.length === 0) return `all courses move ${this.shift({ across: first, up })}`;
    const steps = across.map((by) => (by === 0 ? "not at all" : this.shift({ across: by, up: 0 })));
    const way = `by their place in the bond: ${steps.join(" or ")}`;
    if (up === 0) return `courses move ${way}`;
    return `all courses move ${this.shift({ across: 0, up })}, and across ${way}`;
  }

  /** `8 pieces at the left end: 3 in wide -> 2 5/8 in wide, in courses 1 to 8`. */
  recut({ count, before, after, courses }: RecutPieces): string {
    const [was, is] = this.#cuts(before, after);
    const cut = after.cut === "none" ? before : after;
    const other = before.cut === "none" || after.cut === "none" || before.place === after.place;
    const place = other ? cut.place : `${after.place} (was ${before.place})`;
    const shape = was === is ? `${is}, of another shape` : `${was} -> ${is}`;
    return `${counted(count, "piece")} ${place}: ${shape}, ${courseWords(courses.after)}`;
  }

  /** `31 pieces at the left end change places: 2 5/8 in wide in courses 2 and 4, whole in course 3`. */
  exchange(pair: Exchange): string {
    const pieces = counted(pair[0].count + pair[1].count, "piece");
    const now = pair.map(({ before, after, courses }) => {
      const [, is] = this.#cuts(before, after);
      return `${is} ${courseWords(courses.after)}`;
    });
    return `${pieces} ${pair[0].after.place} change places: ${now.join(", ")}`;
  }

  /** New or gone pieces that are cut. */
  apart({ count, piece, courses }: SeveralPieces, what: "new" | "gone"): string {
    const pieces = what === "new" ? counted(count, "new piece") : `${counted(count, "piece")} gone`;
    return `${pieces} ${piece.place}: ${this.#cut(piece)}, ${courseWords(courses)}`;
  }

  /** Of two rectangles, only the side that differs; else the whole of both. */
  #cuts(before: CutPiece, after: CutPiece): [string, string] {
    const plain = isPlain(before) && isPlain(after);
    const sameWidth = sameRange(before.width, after.width);
    const sameHeight = sameRange(before.height, after.height);
    const whole = before.cut === "none" || after.cut === "none";
    const told = (piece: CutPiece): string => {
      if (piece.cut === "none") return "whole";
      if (plain && (whole ? piece.cut === "rip" : sameWidth))
        return `${this.#range(piece.height)} high`;
      if (plain && (whole ? piece.cut === "end" : sameHeight))
        return `${this.#range(piece.width)} wide`;
      return this.#cut(piece);
    };
    return [told(before), told(after)];
  }

  #cut(piece: CutPiece): string {
    const size = `${this.#range(piece.width)} x ${this.#range(piece.height)}`;
    switch (piece.cut) {
      case "none":
        return "whole";
      case "end":
        return `${this.#range(piece.width)} wide`;
      case "rip":
        return `${this.#range(piece.height)} high`;
      case "corner":
        return size;
      case "notch": {
        const { across, up } = piece.notch ?? { across: 0, up: 0 };
        return `L cut ${size} less ${this.#length(across)} x ${this.#length(up)}`;
      }
      case "slot":
        return `U cut ${size}`;
      case "scribe":
        return `scribed ${size}`;
      case "hole":
        return `${size} with its hole`;
    }
  }

  #range({ least, most }: Range): string {
    const [low, high] = [this.#length(least), this.#length(most)];
    return low === high ? low : `${low} to ${high}`;
  }

  /** A finding without its wall. */
  finding({ before, after }: FindingChange): string {
    if (!before) {
      const waived = after!.allowed === undefined ? "" : ", waived";
      return `new${waived}: ${findingWords(after!)}${reasonOf(after!)}`;
    }
    if (!after) return `gone: ${findingWords(before)}`;
    if (before.allowed === undefined && after.allowed !== undefined) {
      return `waived: ${findingWords(after, before.severity)}${reasonOf(after)}`;
    }
    if (before.allowed !== undefined && after.allowed === undefined) {
      return `no longer waived: ${findingWords(after)}`;
    }
    const was =
      before.message !== after.message
        ? ` (was: ${before.message})`
        : before.severity !== after.severity
          ? ` (was: ${severityWord(before.severity)})`
          : "";
    return `still: ${findingWords(after)}${was}${reasonOf(after)}`;
  }

  smallest({ before, after }: Pair<WallReading>): string {
    const size = ({ smallest }: WallReading) =>
      smallest ? `${this.#length(smallest.width)} x ${this.#length(smallest.height)}` : "none";
    return `smallest cut: ${size(before)} -> ${size(after)}`;
  }

  cuts({ before, after }: Pair<WallReading>): string {
    return `cut pieces: ${before.cuts} -> ${after.cuts}`;
  }

  mitred({ before, after }: Pair<WallReading>): string {
    return `mitred edges: ${before.mitred} -> ${after.mitred}`;
  }

  /** What was gained, then what was lost; the sides of one opening in one line. */
  alignments(changes: readonly Change<Alignment>[]): string[] {
    return (["after", "before"] as const).flatMap((when) => {
      const list = changes.flatMap((each) =>
        each[when === "after" ? "before" : "after"] === null ? each[when]! : [],
      );
      const label = when === "after" ? "gained" : "lost";
      return alignmentWords(list).map((words) => `${label}: ${words}`);
    });
  }

  /** What is bought of tile and trim, a line each, then of materials in one; silent where as much is. */
  quantities(quantities: readonly Quantity[]): string[] {
    const materials = quantities.flatMap((each) =>
      "amount" in each ? (this.#material(each) ?? []) : [],
    );
    return [
      ...quantities.flatMap((each) => ("pieces" in each ? (this.#pieces(each) ?? []) : [])),
      ...(materials.length > 0 ? [materials.join("; ")] : []),
    ];
  }

  #pieces({ kind, name, pieces, boxes }: PieceQuantity): string | null {
    if (pieces.before === pieces.after && !differ(boxes)) return null;
    const noun = kind === "tile" ? "tiles needed" : "lengths needed";
    const said = `${kind} ${name.after ?? name.before!}: ${pieces.before} -> ${pieces.after} ${noun}`;
    const { before, after } = boxes;
    if (before === null || after === null) return `${said}, ${moreWords(pieces)}`;
    const held =
      before === after ? `still ${counted(after, "box", "boxes")}` : `boxes ${before} -> ${after}`;
    return `${said}, ${moreWords(pieces)}; ${held}`;
  }

  /** Told where the rounded figures differ: a hair more of grout is no news. */
  #material({ kind, of, amount, pack, packs }: MaterialQuantity): string | null {
    const [old, now] = [amount.before, amount.after].map((whole) =>
      of === "area" ? formatAmount(whole, of, this.#units) : ownVolumeWords(whole, this.#units),
    );
    if (old === now && !differ(packs)) return null;
    const held = pack && differ(packs) ? `, ${pack}s ${packs.before} -> ${packs.after}` : "";
    return `${kind} ${old!} -> ${now!}${held}`;
  }

  /** `640 pieces only moved, up 3/8 in`. */
  moved(groups: readonly MovedPieces[]): string {
    const all = groups.reduce((sum, { count }) => sum + count, 0);
    const said = `${counted(all, "piece")} only moved`;
    const told = groups.filter(({ by }) => by.across !== 0 || by.up !== 0);
    if (told.length === 1 && groups.length === 1) return `${said}, ${this.shift(told[0]!.by)}`;
    const most = (way: keyof Shift) =>
      told.reduce((far, { by }) => Math.max(far, Math.abs(by[way])), 0);
    const ways = (["across", "up"] as const)
      .filter((way) => most(way) > 0)
      .map((way) => `${this.#far(most(way))} ${way === "up" ? "up or down" : "across"}`);
    return ways.length === 0 ? said : `${said}, by at most ${ways.join(" and ")}`;
  }

  /** How far; what rounds to nothing is a hair. */
  #far(nm: Nm): string {
    const far = this.#length(Math.abs(nm));
    return /^0\+?[ "]/.test(far) ? "a hair" : far;
  }

  #length(nm: Nm): string {
    return formatLength(nm, this.#units);
  }
}

/** Whether boxes, bags or tubes differ, where both plans say what one holds. */
function differ({ before, after }: Change<number>): boolean {
  return before !== null && after !== null && before !== after;
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

function isPlain({ cut }: CutPiece): boolean {
  return cut === "none" || cut === "end" || cut === "rip" || cut === "corner";
}

function sameRange(a: Range, b: Range): boolean {
  return a.least === b.least && a.most === b.most;
}

/** More courses than these are counted. */
const COURSES_NAMED = 6;

/** `in course 3`, `in courses 1 to 8`, `in every other course from 1 to 31`, `in courses 1 and 5`. */
export function courseWords(courses: readonly number[]): string {
  const order = [...courses].sort((a, b) => a - b);
  const [first, last] = [order[0]!, order.at(-1)!];
  if (order.length === 1) return `in course ${first}`;
  const step = order[1]! - first;
  const even = order.every((course, i) => course === first + i * step);
  if (even && step === 1 && order.length > 2) return `in courses ${first} to ${last}`;
  if (even && step === 2 && order.length > 2) {
    return `in every other course from ${first} to ${last}`;
  }
  if (order.length > COURSES_NAMED) return `in ${order.length} courses from ${first} to ${last}`;
  return `in courses ${order.slice(0, -1).join(", ")} and ${last}`;
}

function alignmentWords(list: readonly Alignment[]): string[] {
  const sides = new Map<string, Side[]>();
  for (const each of list) {
    if (each.kind !== "opening on a joint") continue;
    sides.set(each.opening, [...(sides.get(each.opening) ?? []), each.side]);
  }
  const openings = [...sides].map(([opening, own]) => {
    if (own.length === 1) return `the ${own[0]!} of ${opening} on a joint`;
    return `the ${own.slice(0, -1).join(", ")} and ${own.at(-1)!} of ${opening} on joints`;
  });
  const others = list.flatMap((each) => {
    if (each.kind === "courses meet") return [`the courses meet those of ${each.wall}`];
    if (each.kind !== "centred") return [];
    return [`a ${each.what} on the centre line of ${each.on === "wall" ? "the wall" : each.on}`];
  });
  return [...openings, ...others];
}

function findingWords({ code, severity, message }: Diagnostic, weight = severity): string {
  return `${severityWord(weight)} ${code}: ${message}`;
}

function severityWord(severity: Diagnostic["severity"]): string {
  return severity === "information" ? "note" : severity;
}

function reasonOf({ allowed }: Diagnostic): string {
  return allowed === undefined ? "" : ` (reason: ${allowed})`;
}

function moreWords({ before, after }: Pair<number>): string {
  if (after === before) return "as many";
  return after > before ? `${after - before} more` : `${before - after} fewer`;
}

/** `1 piece`, `8 pieces`. */
export function counted(count: number, noun: string, nouns = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : nouns}`;
}

/** `1 to 3, 5`. */
function numberRuns(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last?.[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from} to ${to}`)).join(", ");
}

import { type BlockKind, type Expected, expectedAt, type NameWanted } from "../language/index.js";
import { AMOUNT_UNITS, type AmountKind, UNIT_WORDS } from "../measure/index.js";
import { LIMITS, OPENING_KINDS, type Position, type SourceRange } from "../model/index.js";
import { RULES } from "../rules/index.js";
import type { DocumentState } from "./document-state.js";
import { keywordHelp } from "./keywords.js";
import { type NameKind, namesOf } from "./names.js";
import { statementsAt } from "./walk-tree.js";

export type CompletionKind = "keyword" | "unit" | "code" | "limit" | "file" | NameKind;

/** One thing that may stand at the place. */
export interface Completion {
  readonly label: string;
  readonly kind: CompletionKind;
  /** One line of help. */
  readonly help: string;
  /** What takes the place of the stretch. */
  readonly text: string;
  readonly range: SourceRange;
}

/** A workspace with more files than this is not offered whole. */
const MOST_OFFERED = 500;

/** What may stand at a place of the text, which may be broken there. */
export function completionsAt(state: DocumentState, position: Position): Completion[] {
  const { tree, document } = state;
  const offset = tree.lines.offset(position);
  const expected = expectedAt(document.text, offset);
  if (!expected) return [];
  return new Completing(state, offset, expected).all();
}

class Completing {
  private readonly range: SourceRange;

  constructor(
    private readonly state: DocumentState,
    private readonly offset: number,
    private readonly expected: Expected,
  ) {
    this.range = state.tree.lines.range({ start: expected.from, end: offset });
  }

  all(): Completion[] {
    const { words, names, text, unit, length, block, statement } = this.expected;
    if (text === "inside") return statement === "use" ? this.files() : [];
    // Directly behind a number nothing else may stand.
    if (unit) return this.unitsBehind();
    return [
      ...(block === "rules" && statement === null ? this.limits() : []),
      ...words.filter((word) => !this.isSaid(word)).map((word) => this.word(word)),
      ...names.flatMap((name) => this.names(name)),
      ...(length && !names.includes("let") ? this.names("let") : []),
      ...(text === "may-begin" && statement === "use" ? this.files('"') : []),
    ];
  }

  private offer(kind: CompletionKind, label: string, help: string, text = label): Completion {
    return { label, kind, help, text, range: this.range };
  }

  private word(word: string): Completion {
    const statement = this.expected.statement ?? "";
    const kind = STATEMENT_KIND[statement] ?? statement;
    return this.offer("keyword", word, keywordHelp(word, kind) ?? "");
  }

  /** Whether a statement that may be said once stands in the block already. */
  private isSaid(word: string): boolean {
    const { block, statement } = this.expected;
    if (statement !== null || MANY[block].includes(word)) return false;
    const blocks = statementsAt(this.state.tree, this.offset);
    const holding = blocks.filter((each) => "body" in each).at(-1);
    const body =
      block === "plan"
        ? this.state.tree.statements
        : holding && "body" in holding
          ? holding.body
          : [];
    return body.some((part) => {
      const here = part.start <= this.offset && this.offset <= part.end;
      return !here && (part.kind === "edge" ? part.side : part.kind) === word;
    });
  }

  private names(wanted: NameWanted): Completion[] {
    switch (wanted) {
      case "new":
        return [];
      case "unit":
        return ["inch", "mm", "cm", "m", "foot"].map((unit) =>
          this.offer("unit", unit, keywordHelp(unit, "units") ?? ""),
        );
      case "code":
        return RULES.filter(({ code }) => !code.startsWith("allow/")).map(({ code, title }) => ({
          ...this.offer("code", code, title),
          range: this.behind(/[\w/-]*$/),
        }));
      case "mass":
      case "volume":
      case "area":
        return this.amountUnits(wanted);
      case "opening":
        return [
          ...(WALL_TOO.includes(this.expected.statement ?? "")
            ? [this.offer("keyword", "wall", "The middle of the bare wall.")]
            : []),
          ...this.declared("opening"),
        ];
      default:
        return this.declared(wanted);
    }
  }

  /** Names of this text, then those that come with used files. */
  private declared(kind: NameKind): Completion[] {
    const { tree } = this.state;
    const wall = statementsAt(tree, this.offset).find((each) => each.kind === "wall");
    const wallName = wall?.kind === "wall" ? wall.name?.text : undefined;
    const here = namesOf(tree)
      .filter((name) => name.declares && name.kind === kind)
      // The room's wishes may name the openings of all walls.
      .filter((name) => kind !== "opening" || !wall || name.wall === wallName)
      .filter((name) => kind !== "wall" || name.word.text !== wallName)
      .map(({ word }) => word.text);
    const brought = this.brought(kind);
    return [...new Set([...here, ...brought])].map((name) =>
      this.offer(kind, name, this.helpOf(kind, name)),
    );
  }

  private brought(kind: NameKind): readonly string[] {
    const { plan, lets } = this.state.outcome;
    if (kind === "let") return [...lets.keys()];
    if (kind === "tile") return plan.tiles.map(({ name }) => name);
    if (kind === "trim") return plan.trims.map(({ name }) => name);
    return [];
  }

  private helpOf(kind: NameKind, name: string): string {
    const { plan } = this.state.outcome;
    if (kind === "tile") return plan.tiles.find((tile) => tile.name === name)?.title ?? "";
    if (kind === "trim") return plan.trims.find((trim) => trim.name === name)?.title ?? "";
    if (kind === "wall") return plan.walls.find((wall) => wall.name === name)?.title ?? "";
    if (kind === "let") return "A named length.";
    return "An opening of this wall.";
  }

  /** The units that may stand directly behind a number. */
  private unitsBehind(): Completion[] {
    const amounts = this.expected.names.filter(isAmount);
    if (amounts.length > 0) return amounts.flatMap((kind) => this.amountUnits(kind));
    return UNITLESS.includes(this.expected.statement ?? "") ? [] : this.units();
  }

  private amountUnits(kind: AmountKind): Completion[] {
    const range = this.behind(/[A-Za-z]*$/);
    return [...AMOUNT_UNITS[kind].keys()].map((unit) => ({
      ...this.offer("unit", unit, keywordHelp(unit, kind) ?? ""),
      range,
    }));
  }

  private units(): Completion[] {
    return Object.keys(UNIT_WORDS)
      .filter((word) => ["in", "ft", "mm", "cm", "m"].includes(word))
      .map((word) => ({
        ...this.offer("unit", word, keywordHelp(word, "units") ?? ""),
        range: this.behind(/[A-Za-z]*$/),
      }));
  }

  /** The stretch before the place that a completion takes the place of. */
  private behind(pattern: RegExp): SourceRange {
    const { text } = this.state.document;
    const line = text.slice(text.lastIndexOf("\n", this.offset - 1) + 1, this.offset);
    const start = this.offset - pattern.exec(line)![0].length;
    return this.state.tree.lines.range({ start, end: this.offset });
  }

  private limits(): Completion[] {
    return Object.entries(LIMITS).map(([name, { about }]) => this.offer("limit", name, about));
  }

  /** Paths from this file to the other plans of the workspace. */
  private files(quote = ""): Completion[] {
    const { workspace, document } = this.state;
    const folder = document.file.slice(0, document.file.lastIndexOf("/") + 1);
    const paths: string[] = [];
    for (const file of workspace.files()) {
      if (paths.length >= MOST_OFFERED) break;
      if (file !== document.file && file.startsWith(`${workspace.rootOf(document.file)}/`)) {
        paths.push(pathBetween(folder, file));
      }
    }
    return paths
      .sort()
      .map((path) =>
        this.offer("file", path, "A shared file of this workspace.", `${quote}${path}${quote}`),
      );
  }
}

/** The path to a file from a folder; both absolute, the folder with its last slash. */
export function pathBetween(folder: string, file: string): string {
  const from = folder.split("/").slice(0, -1);
  const to = file.split("/");
  let shared = 0;
  while (shared < from.length && shared < to.length - 1 && from[shared] === to[shared]) shared++;
  return [...from.slice(shared).map(() => ".."), ...to.slice(shared)].join("/");
}

/** The kinds of statement that begin with a word other than their own name. */
const STATEMENT_KIND: Readonly<Record<string, string>> = {
  left: "edge",
  right: "edge",
  bottom: "edge",
  top: "edge",
  window: "opening",
  niche: "opening",
  door: "opening",
  bench: "opening",
  curb: "opening",
  soffit: "opening",
  courses: "wish",
  centre: "wish",
  no: "wish",
  whole: "wish",
  equal: "wish",
  few: "wish",
  movement: "soft-joint",
};

/** Statements in which a start may be centred on the wall. */
const WALL_TOO: readonly string[] = ["across", "back", "sill", "head"];

/** Statements whose numbers are no lengths. */
const UNITLESS: readonly string[] = [
  "bond",
  "box",
  "allow",
  "price",
  "breakage",
  "spares",
  "density",
];

function isAmount(wanted: NameWanted): wanted is AmountKind {
  return Object.hasOwn(AMOUNT_UNITS, wanted);
}

/** What may be said more than once in a block. */
const MANY: Readonly<Record<BlockKind, readonly string[]>> = {
  plan: ["let", "use", "tile", "trim", "wall", "allow"],
  tile: ["allow"],
  trim: ["allow"],
  saw: [],
  mortar: [],
  grout: [],
  sealant: [],
  wall: [...OPENING_KINDS, "leg", "hole", "lay", "set", "movement", "allow"],
  opening: ["allow"],
  lay: ["covers", "set", "movement", "allow"],
  prefer: ["centre", "no", "whole"],
  rules: [],
};

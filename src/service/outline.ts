import type { Syntax } from "../language/index.js";
import type { SourceRange } from "../model/index.js";
import type { DocumentState } from "./document-state.js";

export type OutlineKind =
  | "plan"
  | "use"
  | "let"
  | "tile"
  | "trim"
  | "supply"
  | "wall"
  | "edge"
  | "opening"
  | "hole"
  | "lay"
  | "rules";

/** An entry of the outline. */
export interface OutlineItem {
  readonly kind: OutlineKind;
  readonly name: string;
  /** What stands beside the name: a title, a value, what a side meets. */
  readonly detail: string;
  readonly range: SourceRange;
  /** Its name or keyword, within the range. */
  readonly head: SourceRange;
  readonly inside: readonly OutlineItem[];
}

/** The outline of a text: what it declares, in its order. */
export function outlineOf({ tree }: DocumentState): OutlineItem[] {
  return tree.statements.flatMap((statement) => itemsOf(statement, tree));
}

function itemsOf(statement: Syntax.Statement, tree: Syntax.SyntaxTree): OutlineItem[] {
  const item = (kind: OutlineKind, name: string, detail: string): OutlineItem[] => [
    {
      kind,
      name,
      detail,
      range: tree.lines.range(statement),
      head: tree.lines.range(statement.head),
      inside: "body" in statement ? statement.body.flatMap((part) => itemsOf(part, tree)) : [],
    },
  ];
  const written = (part: { readonly start: number; readonly end: number }): string =>
    tree.text.slice(part.start, part.end).replace(/\s+/g, " ");
  switch (statement.kind) {
    case "plan":
      return item("plan", statement.title.text || "plan", "");
    case "use":
      return item("use", statement.path.text || "use", "");
    case "let":
      return item("let", statement.name.text, written(statement.value));
    case "tile":
    case "trim":
    case "wall":
      return item(
        statement.kind,
        statement.name?.text ?? statement.kind,
        statement.title?.text ?? "",
      );
    case "saw":
      return item("supply", "saw", "");
    case "mortar":
    case "grout":
    case "sealant":
      return item("supply", statement.kind, statement.title?.text ?? "");
    case "rules":
      return item("rules", "rules", "");
    case "edge":
      return item("edge", statement.side, meetingWords(statement.meets));
    case "outline":
      return item("edge", "outline", `${statement.corners.length} corners`);
    case "leg":
      return item("edge", `leg ${statement.side}`, statement.meets ?? "floor");
    case "opening":
      return item("opening", statement.name?.text ?? statement.opening, statement.opening);
    case "hole":
      return item("hole", statement.name.text, `across ${written(statement.across)}`);
    case "lay":
      return item("lay", `lay ${statement.name?.text ?? ""}`.trim(), "");
    default:
      return [];
  }
}

function meetingWords(meets: Syntax.WrittenMeeting): string {
  switch (meets.kind) {
    case "plain":
      return meets.what;
    case "corner":
      return `corner ${meets.wall.text} ${meets.lap.text}`;
    case "outside": {
      const trim = "trim" in meets && meets.trim ? `, trim ${meets.trim.text}` : "";
      return `outside ${meets.wall.text} ${meets.lap.text}${trim}`;
    }
    case "free":
      return meets.trim ? `free, trim ${meets.trim.text}` : "free";
  }
}

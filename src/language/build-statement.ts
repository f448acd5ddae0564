import type { CstNode, IToken } from "chevrotain";
import { buildAmount, buildNumber } from "./build-amount.js";
import type { Problems } from "./build-expression.js";
import { buildExpression } from "./build-expression.js";
import { nodeAt, nodesAt, spanOf, textOf, tokenAt, wordOf } from "./cst.js";
import type { Span } from "./line-table.js";
import { nearest } from "./nearest.js";
import type * as S from "./syntax.js";

/** Makes one kind of statement from its node; the word to underline is given. */
export type Build = (
  node: CstNode,
  tree: TreeBuilder,
  stated: Span & { head: Span },
) => S.Statement;

/** How each kind of statement is made, by its rule in the grammar. */
export type Builds = Readonly<Record<string, Build>>;

/** The plain tree of a parsed text, statement by statement. */
export class TreeBuilder {
  /** What can't be read is added to the problems; the table has every kind of statement. */
  constructor(
    readonly problems: Problems,
    private readonly builds: Builds,
  ) {}

  length(node: CstNode, label = "expression"): S.Expression {
    return buildExpression(nodeAt(node, label)!, this.problems);
  }

  optionalLength(node: CstNode, label: string): S.Expression | null {
    const expression = nodeAt(node, label);
    return expression ? buildExpression(expression, this.problems) : null;
  }

  pair(node: CstNode): { first: S.Expression; second: S.Expression } {
    const pair = nodeAt(node, "pair")!;
    return { first: this.length(pair, "first"), second: this.length(pair, "second") };
  }

  number(node: CstNode): S.WrittenNumber {
    return buildNumber(nodeAt(node, "number")!, this.problems);
  }

  amount(node: CstNode, label: "mass" | "volume" | "area"): S.WrittenAmount {
    return buildAmount(nodeAt(node, label)!, this.problems);
  }

  /** The statements of a block, in the order of the text. */
  body(node: CstNode, rule: string): S.Statement[] {
    return nodesAt(node, rule).flatMap((wrapper) => {
      const [kind, parts] = Object.entries(wrapper.children)[0] ?? [];
      const part = parts?.[0];
      return kind !== undefined && part && "children" in part ? [this.statement(kind, part)] : [];
    });
  }

  private statement(kind: string, node: CstNode): S.Statement {
    const build = this.builds[kind]!;
    const stated = { ...spanOf(node), head: this.headOf(node) };
    const isBlock = "CloseBrace" in node.children;
    if (node.recoveredNode && !isBlock)
      return { kind: "broken", meant: this.meantOf(kind, node), ...stated };
    return build(node, this, stated);
  }

  /** The name that a statement gives, else its keyword. */
  private headOf(node: CstNode): Span {
    const heading = nodeAt(node, "heading") ?? nodeAt(node, "titledHeading");
    const name = heading && tokenAt(heading, "Name");
    const named = name ?? (NAMED.has(node.name) ? tokenAt(node, "Name") : undefined);
    const { start, end } = wordOf(named ?? starterOf(node));
    return { start, end };
  }

  /** A broken edge is told by its side, so that its side doesn't count as unstated. */
  private meantOf(kind: string, node: CstNode): string {
    return kind === "edge" ? meantWord(starterOf(node), SIDES) : kind;
  }
}

/** The words that begin an edge. */
export const SIDES: readonly S.EdgeStatement["side"][] = ["left", "right", "bottom", "top"];

/** Statements other than blocks whose own name is underlined. */
const NAMED: ReadonlySet<string> = new Set(["let", "hole"]);

/** The word that a statement begins with. */
export function starterOf(node: CstNode): IToken {
  const label = Object.keys(node.children).find((name) => name.endsWith("Start"))!;
  return tokenAt(node, label)!;
}

/** One of several words that begin a statement; a mistyped one, already told, stands for the nearest. */
export function meantWord<T extends string>({ image }: IToken, words: readonly T[]): T {
  const meant = words.find((word) => word === image);
  if (meant !== undefined) return meant;
  const near = nearest(image, words);
  return words.find((word) => word === near) ?? words[0]!;
}

/** The name in a heading; null where it has none that can be read. */
export function nameOf(node: CstNode): S.Word | null {
  const token = tokenAt(nodeAt(node, "heading") ?? nodeAt(node, "titledHeading") ?? node, "Name");
  return token ? wordOf(token) : null;
}

/** The title in a heading, without its quotes. */
export function titleOf(node: CstNode): S.Word | null {
  const heading = nodeAt(node, "titledHeading") ?? nodeAt(node, "namelessHeading");
  const token = tokenAt(heading ?? node, "Text");
  return token ? textOf(token) : null;
}

/** A statement of one length. */
export const measured =
  (kind: MeasuredKind): Build =>
  (node, tree, stated) => ({ kind, ...stated, length: tree.length(node) });

type MeasuredKind = Exclude<
  Extract<S.Statement, { readonly length: S.Expression }>,
  S.BetweenStatement
>["kind"];

import type { CstElement, CstNode, IToken } from "chevrotain";
import { endOf } from "./lines.js";
import type { Span } from "./line-table.js";
import type { Word } from "./syntax.js";

/** The parts of a node by their label or type; in a broken line some are missing. */
export function tokensAt(node: CstNode, label: string): IToken[] {
  return (node.children[label] ?? []).filter(isToken);
}

export function tokenAt(node: CstNode, label: string): IToken | undefined {
  return node.children[label]?.find(isToken);
}

export function nodesAt(node: CstNode, label: string): CstNode[] {
  return (node.children[label] ?? []).filter(isNode);
}

export function nodeAt(node: CstNode, label: string): CstNode | undefined {
  return node.children[label]?.find(isNode);
}

function isToken(part: CstElement): part is IToken {
  return "image" in part;
}

function isNode(part: CstElement): part is CstNode {
  return !isToken(part);
}

/** From a node's first character to its last token's end. */
export function spanOf(node: CstNode): Span {
  const { startOffset, endOffset } = node.location!;
  return { start: startOffset, end: endOffset! + 1 };
}

export function wordOf(token: IToken): Word {
  return { text: token.image, start: token.startOffset, end: endOf(token) };
}

/** A text without its quotes; its place is with them. */
export function textOf(token: IToken): Word {
  return { ...wordOf(token), text: token.image.replace(/^"|"$/g, "") };
}

import {
  CompletionItemKind,
  type DocumentSymbol,
  FoldingRangeKind,
  type Position,
  type Range,
  type SelectionRange,
  SymbolKind,
} from "vscode-languageserver";
import type { CompletionKind, Fold, OutlineItem, OutlineKind } from "../service/index.js";

const SYMBOL: Readonly<Record<OutlineKind, SymbolKind>> = {
  plan: SymbolKind.File,
  use: SymbolKind.Module,
  let: SymbolKind.Constant,
  tile: SymbolKind.Struct,
  trim: SymbolKind.Interface,
  wall: SymbolKind.Class,
  edge: SymbolKind.Field,
  opening: SymbolKind.Property,
  hole: SymbolKind.Event,
  lay: SymbolKind.Method,
  supply: SymbolKind.Object,
  rules: SymbolKind.Namespace,
};

export function symbolOf({ kind, name, detail, range, head, inside }: OutlineItem): DocumentSymbol {
  return {
    // A client may refuse a name of spaces alone.
    name: name.trim() || kind,
    detail,
    kind: SYMBOL[kind],
    range,
    selectionRange: head,
    children: inside.map(symbolOf),
  };
}

const COMPLETION: Readonly<Record<CompletionKind, CompletionItemKind>> = {
  keyword: CompletionItemKind.Keyword,
  unit: CompletionItemKind.Unit,
  code: CompletionItemKind.EnumMember,
  limit: CompletionItemKind.Property,
  file: CompletionItemKind.File,
  let: CompletionItemKind.Constant,
  tile: CompletionItemKind.Struct,
  trim: CompletionItemKind.Interface,
  wall: CompletionItemKind.Class,
  opening: CompletionItemKind.Property,
  hole: CompletionItemKind.Property,
};

export function completionKind(kind: CompletionKind): CompletionItemKind {
  return COMPLETION[kind];
}

/** A block's fold has no kind of its own. */
export function foldKind(kind: Fold["kind"]): { kind?: FoldingRangeKind } {
  return kind === "comment" ? { kind: FoldingRangeKind.Comment } : {};
}

/** Stretches in one another, smallest first, as a chain. */
export function selectionChain(ranges: readonly Range[], position: Position): SelectionRange {
  const chain = ranges.reduceRight<SelectionRange | undefined>(
    (parent, range) => (parent ? { range, parent } : { range }),
    undefined,
  );
  return chain ?? { range: { start: position, end: position } };
}

import {
  SemanticTokenModifiers,
  SemanticTokensBuilder,
  type SemanticTokensLegend,
  SemanticTokenTypes,
} from "vscode-languageserver";
import type { NameKind, NameToken } from "../service/index.js";

/** What each kind of name is in the protocol's own words, so that every theme knows it. */
const TYPE: Readonly<Record<NameKind, SemanticTokenTypes>> = {
  let: SemanticTokenTypes.variable,
  tile: SemanticTokenTypes.type,
  trim: SemanticTokenTypes.struct,
  wall: SemanticTokenTypes.class,
  opening: SemanticTokenTypes.property,
  hole: SemanticTokenTypes.property,
};

const TYPES = [...new Set(Object.values(TYPE))];

export const TOKEN_LEGEND: SemanticTokensLegend = {
  tokenTypes: TYPES,
  tokenModifiers: [SemanticTokenModifiers.declaration, SemanticTokenModifiers.readonly],
};

const DECLARATION = 1;
const READONLY = 2;

/** Names as the protocol's row of numbers. */
export function encodeTokens(tokens: readonly NameToken[]): number[] {
  const builder = new SemanticTokensBuilder();
  for (const { kind, declares, range } of tokens) {
    const modifiers = (declares ? DECLARATION : 0) | (kind === "let" ? READONLY : 0);
    const { line, character } = range.start;
    const length = range.end.character - character;
    builder.push(line, character, length, TYPES.indexOf(TYPE[kind]), modifiers);
  }
  return builder.build().data;
}

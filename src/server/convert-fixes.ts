import { type CodeAction, CodeActionKind, type Diagnostic } from "vscode-languageserver";
import type { Fix, PlanDocument } from "../service/index.js";

/** A mend for the client, with those of its diagnostics that it clears. */
export function lspFix(
  { title, mends, preferred, edits }: Fix,
  { uri }: PlanDocument,
  shown: readonly Diagnostic[],
): CodeAction {
  const mended = shown.filter(
    ({ code, range }) =>
      mends !== null && code === mends.code && range.start.line === mends.range.start.line,
  );
  return {
    title,
    kind: mends === null ? CodeActionKind.RefactorRewrite : CodeActionKind.QuickFix,
    ...(mended.length === 0 ? {} : { diagnostics: mended }),
    ...(preferred ? { isPreferred: true } : {}),
    edit: { changes: { [uri]: edits.map(({ range, text }) => ({ range, newText: text })) } },
  };
}

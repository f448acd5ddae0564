import * as vscode from "vscode";
import { until } from "./until.js";

/** The codes of a plan's diagnostics, in order of their places. */
export function codesOf(uri: vscode.Uri): string[] {
  return [...vscode.languages.getDiagnostics(uri)]
    .sort((a, b) => a.range.start.compareTo(b.range.start))
    .map(({ code }) => String(typeof code === "object" ? code.value : code));
}

/** The plan's diagnostic with a code, once it is told. */
export function findingOf(uri: vscode.Uri, code: string): Promise<vscode.Diagnostic> {
  return until(`${code} in ${uri.path}`, () =>
    vscode.languages
      .getDiagnostics(uri)
      .find((each) => (typeof each.code === "object" ? each.code.value : each.code) === code),
  );
}

/** Waits until a plan has no diagnostic with a code. */
export function noFindingOf(uri: vscode.Uri, code: string): Promise<true> {
  return until(`no ${code} in ${uri.path}`, () => !codesOf(uri).includes(code));
}

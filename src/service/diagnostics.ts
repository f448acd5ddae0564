import type { Diagnostic, RelatedPlace, Severity, SourceRange } from "../model/index.js";
import type { Syntax } from "../language/index.js";
import type { DocumentState } from "./document-state.js";
import { usesOf } from "./used-files.js";
import { sourceLink } from "./source-link.js";

/** A diagnostic as an editor shows it, in the document that was asked about. */
export interface PlanDiagnostic {
  readonly code: string;
  /** `hint`: allowed, with a reason. */
  readonly severity: Severity | "hint";
  readonly message: string;
  readonly range: SourceRange;
  /** The published source of the rule, or "common practice"; null for what the language says. */
  readonly source: string | null;
  /** Where the source can be read. */
  readonly link: string | null;
  readonly related: readonly RelatedPlace[];
}

/** More than these of one plan tell nobody anything. */
const MOST_DIAGNOSTICS = 1000;

/** What is to be told of a document, in the order of its text. */
export function diagnosticsOf(state: DocumentState): PlanDiagnostic[] {
  const { diagnostics } = state.outcome;
  const shown = diagnostics
    .slice(0, MOST_DIAGNOSTICS)
    .flatMap((diagnostic) => placed(diagnostic, state));
  return shown.sort(
    ({ range: { start: a } }, { range: { start: b } }) =>
      a.line - b.line || a.character - b.character,
  );
}

/** What is found in a used file is told at the `use` that brings it. */
function placed(diagnostic: Diagnostic, state: DocumentState): PlanDiagnostic[] {
  const { file } = state.document;
  if (diagnostic.file === file) return [planDiagnostic(diagnostic)];
  const use = useOf(diagnostic.file, state);
  if (!use) return [];
  const { range, message } = diagnostic;
  const related = { file: diagnostic.file, range, message };
  const there = `in \`${use.path.text}\`, line ${range.start.line + 1}: ${message}`;
  return [
    planDiagnostic({
      ...diagnostic,
      message: there,
      range: state.tree.lines.range(use.path),
      related: [related, ...(diagnostic.related ?? [])],
    }),
  ];
}

function useOf(file: string, state: DocumentState): Syntax.UseStatement | undefined {
  const uses = usesOf(state);
  return (uses.find((use) => use.file === file) ?? uses[0])?.statement;
}

function planDiagnostic(diagnostic: Diagnostic): PlanDiagnostic {
  const { code, severity, message, range, source, related, allowed } = diagnostic;
  return {
    code,
    severity: allowed === undefined ? severity : "hint",
    message: allowed === undefined ? message : `${message} (allowed: ${allowed})`,
    range,
    source: source ?? null,
    link: source === undefined ? null : sourceLink(source),
    related: related ?? [],
  };
}

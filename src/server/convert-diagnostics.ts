import { type Diagnostic, DiagnosticSeverity } from "vscode-languageserver";
import type { PlanDiagnostic } from "../service/index.js";

const SEVERITY: Readonly<Record<PlanDiagnostic["severity"], DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
};

/** A diagnostic for the client; its code is a link where its source can be read. */
export function lspDiagnostic(
  { code, severity, message, range, source, link, related }: PlanDiagnostic,
  uriOf: (file: string) => string,
): Diagnostic {
  return {
    code,
    severity: SEVERITY[severity],
    message: source === null ? message : `${message}\nSource: ${source}`,
    range,
    source: "gaugelath",
    ...(link === null ? {} : { codeDescription: { href: link } }),
    ...(related.length === 0
      ? {}
      : {
          relatedInformation: related.map((place) => ({
            location: { uri: uriOf(place.file), range: place.range },
            message: place.message,
          })),
        }),
  };
}

import type { Diagnostic } from "../../model/index.js";
import type { FindingChange } from "../comparison.js";

/** A finding without its wall. */
export function findingWords({ before, after }: FindingChange): string {
  if (!before) {
    const waived = after!.allowed === undefined ? "" : ", waived";
    return `new${waived}: ${toldWords(after!)}${reasonOf(after!)}`;
  }
  if (!after) return `gone: ${toldWords(before)}`;
  if (before.allowed === undefined && after.allowed !== undefined) {
    return `waived: ${toldWords(after, before.severity)}${reasonOf(after)}`;
  }
  if (before.allowed !== undefined && after.allowed === undefined) {
    return `no longer waived: ${toldWords(after)}`;
  }
  const was =
    before.message !== after.message
      ? ` (was: ${before.message})`
      : before.severity !== after.severity
        ? ` (was: ${severityWord(before.severity)})`
        : "";
  return `still: ${toldWords(after)}${was}${reasonOf(after)}`;
}

function toldWords({ code, severity, message }: Diagnostic, weight = severity): string {
  return `${severityWord(weight)} ${code}: ${message}`;
}

function severityWord(severity: Diagnostic["severity"]): string {
  return severity === "information" ? "note" : severity;
}

function reasonOf({ allowed }: Diagnostic): string {
  return allowed === undefined ? "" : ` (reason: ${allowed})`;
}

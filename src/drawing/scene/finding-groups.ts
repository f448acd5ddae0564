import type { Diagnostic } from "../../model/index.js";
import type { SeverityMark } from "../scene.js";

/** Findings of one rule on one wall: they share a number in the picture. */
export interface FindingGroup {
  readonly number: string;
  readonly wall: string;
  readonly severity: SeverityMark;
  readonly findings: readonly Diagnostic[];
}

/** More numbers than this are not told in a picture; the words come from the terminal or the editor. */
const MOST_NUMBERS = 24;

/** The findings that a picture can show, in the order of walls and of severity; allowed ones left out. */
export function findingGroups(
  walls: readonly string[],
  diagnostics: readonly Diagnostic[],
): { readonly groups: readonly FindingGroup[]; readonly untold: number } {
  const byKey = new Map<string, Diagnostic[]>();
  for (const wall of walls) {
    for (const severity of ["error", "warning", "information"] as const) {
      for (const finding of diagnostics) {
        if (finding.wall !== wall || finding.severity !== severity || finding.allowed !== undefined)
          continue;
        const key = JSON.stringify([wall, severity, finding.code]);
        const group = byKey.get(key);
        if (group) group.push(finding);
        else byKey.set(key, [finding]);
      }
    }
  }
  const all = [...byKey.values()].map((findings, i): FindingGroup => ({
    number: String(i + 1),
    wall: findings[0]!.wall!,
    severity: findings[0]!.severity,
    findings,
  }));
  const groups = all.slice(0, MOST_NUMBERS);
  return { groups, untold: all.length - groups.length };
}

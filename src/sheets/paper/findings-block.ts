import { plainText } from "../../drawing/index.js";
import type { Block } from "./paper.js";
import type { Diagnostic } from "../../model/index.js";
import { list } from "./blocks.js";

/** What must be settled before a wall is cut: its errors; warnings are told under them. What is allowed is neither. */
export function findingsBlocks(diagnostics: readonly Diagnostic[], wall: string | null): Block[] {
  const mine = diagnostics.filter((found) => isOn(wall, found));
  const errors = mine.filter(({ severity }) => severity === "error").map(findingWords);
  const warnings = mine.filter(({ severity }) => severity === "warning").map(findingWords);
  return [
    ...(errors.length === 0
      ? []
      : [{ kind: "caution", lines: ["Do not cut before this is settled:", ...errors] } as const]),
    ...(warnings.length === 0 ? [] : [list(warnings.map((words) => `Look at this: ${words}`))]),
  ];
}

/** Whether a finding is of a wall, or of a surface inside one of its openings, whose name begins with the wall's; of none: null. */
export function isOn(wall: string | null, { wall: found }: Diagnostic): boolean {
  if (wall === null || found === undefined) return (found ?? null) === wall;
  return found === wall || found.startsWith(`${wall}.`);
}

function findingWords({ code, message, source }: Diagnostic): string {
  return `${plainText(message)} [${code}${source === undefined ? "" : `; ${source}`}]`;
}

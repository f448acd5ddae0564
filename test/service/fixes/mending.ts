import assert from "node:assert/strict";
import type { Fix } from "../../../src/service/index.js";
import { edited, FILE, Plans } from "../plans.js";

/** What a plan's text is after a mend, and what is told of it then. */
export interface Mended {
  readonly fix: Fix;
  readonly text: string;
  /** The codes that are told afterwards; allowed ones are left out. */
  readonly codes: readonly string[];
}

const WHOLE = { start: { line: 0, character: 0 }, end: { line: 100_000, character: 0 } };

/** The mends of a text's diagnostics of one code. */
export function mendsOf(text: string, code: string, plans = new Plans()): Fix[] {
  return plans.service.fixes(plans.open(text), WHOLE).filter(({ mends }) => mends?.code === code);
}

/** Makes the first mend of a code whose title fits, and looks at the text again. */
export function mend(text: string, code: string, title: RegExp, plans = new Plans()): Mended {
  const before = codesOf(text, plans);
  assert.ok(before.includes(code), `${code} is told before: ${before.join(", ")}`);
  const fix = mendsOf(text, code, plans).find((each) => title.test(each.title));
  assert.ok(fix, `a mend called ${String(title)}`);
  const mended = edited(text, fix.edits);
  return { fix, text: mended, codes: codesOf(mended, plans) };
}

/** Every code that is told of a text, but allowed findings. */
export function codesOf(text: string, plans = new Plans()): string[] {
  const diagnostics = plans.service.diagnostics(plans.open(text, FILE));
  return diagnostics.filter(({ severity }) => severity !== "hint").map(({ code }) => code);
}

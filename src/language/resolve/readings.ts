import type { Nm } from "../../measure/index.js";
import { formatLength } from "../../measure/index.js";
import type { Reading, Side } from "../../model/index.js";
import type { MeasuredClause, WrittenReading } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import type { PlanCode } from "./plan-code.js";
import type { WallDraft } from "./wall-draft.js";

/** The readings along a side, in order. One that can't stand is told and left out. */
export function resolveReadings(clause: MeasuredClause, side: Side, draft: WallDraft): Reading[] {
  const kept: { readonly reading: Reading; readonly written: WrittenReading }[] = [];
  for (const written of clause.readings) {
    const at = lengthOf(written.at, "any", draft.scope, draft.name);
    const off = lengthOf(written.off, "any", draft.scope, draft.name);
    if (at === null || off === null) continue;
    const reading = { at, off };
    if (!fits(reading, written, side, draft)) continue;
    const before = kept.at(-1);
    if (before && at <= before.reading.at) tellOrder(reading, written, before, draft);
    else kept.push({ reading, written });
  }
  return kept.map(({ reading }) => reading);
}

function fits(
  { at, off }: Reading,
  written: WrittenReading,
  side: Side,
  draft: WallDraft,
): boolean {
  const { across, up } = draft.size;
  const alongSide = side === "bottom" || side === "top";
  const [length, depth] = alongSide ? [across, up] : [up, across];
  const tell = (code: PlanCode, at: WrittenReading["at"], message: string): boolean => {
    draft.scope.report.tell(code, at, message, { wall: draft.name });
    return false;
  };
  const shown = (nm: Nm): string => formatLength(nm, draft.scope.units);
  if (at < 0 || at > length) {
    const message = `found a reading at ${shown(at)}, wanted one between 0 and the side's length, ${shown(length)}`;
    return tell("plan/reading-beyond", written.at, message);
  }
  // Under half from either side, so that two opposite sides can't meet.
  if (2 * Math.abs(off) < depth) return true;
  const message = `found a side ${shown(off)} off, wanted less than half of the wall's ${shown(depth)}`;
  return tell("plan/reading-large", written.off, message);
}

function tellOrder(
  { at }: Reading,
  written: WrittenReading,
  before: { readonly reading: Reading; readonly written: WrittenReading },
  { scope, name }: WallDraft,
): void {
  const [found, last] = [at, before.reading.at].map((nm) => formatLength(nm, scope.units));
  const message =
    at === before.reading.at
      ? `found a second reading at ${found!}, wanted one for each place`
      : `found a reading at ${found!} after one at ${last!}, wanted them in order`;
  const related = [scope.report.place(before.written, "the reading before")];
  scope.report.tell("plan/reading-order", written.at, message, { wall: name, related });
}

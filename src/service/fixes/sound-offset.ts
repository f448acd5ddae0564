import { isOffsetTooSmall, isOffsetTooWide } from "../../rules/index.js";
import { offsetEdit, offsetText, type Offset } from "./bond-offset.js";
import type { Fixer } from "./fix.js";
import { laysAtHead } from "./lays-at-head.js";
import { statementAtHead } from "./statement-at-head.js";

/** The offsets that setters lay, the widest first. */
const OFFSETS: readonly Offset[] = [
  { p: 1, q: 2 },
  { p: 1, q: 3 },
  { p: 1, q: 4 },
];

/** Lays a bond at the offset nearest to its own that is neither too wide for any of its tiles nor too small. */
export const soundOffset: Fixer = (state, diagnostic) => {
  const { code } = diagnostic;
  if (code !== "bond/offset-over-third" && code !== "joint/stacked") return [];
  const { limits } = state.outcome.plan;
  const lays = laysAtHead(state, diagnostic);
  const [first] = lays;
  if (first?.lay.bond.kind !== "running") return [];
  const { p, q } = first.lay.bond;
  const off = (offset: Offset): number => Math.abs(offset.p / offset.q - Math.min(p, q - p) / q);
  const [nearest] = OFFSETS.filter((offset) => {
    const bond = { kind: "running", ...offset } as const;
    const isTooWide = lays.some(({ lay: { tile } }) => isOffsetTooWide(limits, { tile, bond }));
    return !isTooWide && !isOffsetTooSmall(limits, bond);
  }).sort((a, b) => off(a) - off(b));
  const edit = nearest && offsetEdit(state, statementAtHead(state, diagnostic.range), nearest);
  if (!edit) return [];
  const title = `Lay the bond at an offset of ${offsetText(nearest)}`;
  return [{ title, mends: diagnostic, preferred: false, edits: [edit] }];
};

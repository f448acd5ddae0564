import { isOffsetTooSmall, isOffsetTooWide } from "../../rules/index.js";
import type { Fixer } from "./fix.js";
import { isAtHead, statementAtHead } from "./statement-at-head.js";

/** The offsets that setters lay, the widest first. */
const OFFSETS = [
  { p: 1, q: 2 },
  { p: 1, q: 3 },
  { p: 1, q: 4 },
] as const;

/** Lays a bond at the offset nearest to its own that is neither too wide for its tile nor too small. */
export const soundOffset: Fixer = (state, diagnostic) => {
  const { code } = diagnostic;
  if (code !== "bond/offset-over-third" && code !== "joint/stacked") return [];
  const { plan, solved } = state.outcome;
  const wall = solved.walls.find(({ wall: { name } }) => name === diagnostic.wall);
  const laid = wall?.lays.find(({ lay }) => isAtHead(lay.origin, diagnostic.range));
  const statement = statementAtHead(state, diagnostic.range);
  if (laid?.lay.bond.kind !== "running" || statement?.kind !== "lay") return [];
  const { lay } = laid;
  const written = statement.body.find((part) => part.kind === "bond")?.offset;
  const { p, q } = laid.lay.bond;
  const off = (offset: { readonly p: number; readonly q: number }): number =>
    Math.abs(offset.p / offset.q - Math.min(p, q - p) / q);
  const [nearest] = OFFSETS.filter((offset) => {
    const bond = { kind: "running", ...offset } as const;
    return !isOffsetTooWide(plan.limits, { ...lay, bond }) && !isOffsetTooSmall(plan.limits, bond);
  }).sort((a, b) => off(a) - off(b));
  if (!written || !nearest) return [];
  const text = `${nearest.p}/${nearest.q}`;
  const edits = [{ range: state.tree.lines.range(written), text }];
  const title = `Lay the bond at an offset of ${text}`;
  return [{ title, mends: diagnostic, preferred: false, edits }];
};

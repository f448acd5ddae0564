import { exactLength, formatLength } from "../../measure/index.js";
import type { Bond, Lay } from "../../model/index.js";
import { expectedLippage, LIPPAGE, mostLippage } from "../../rules/index.js";
import type { Fix, Fixer } from "./fix.js";
import { isAtHead, statementAtHead } from "./statement-at-head.js";

/** The offsets of a running bond at which a bow shows less than at half, the largest first. */
const OFFSETS = [
  { p: 1, q: 3 },
  { p: 1, q: 4 },
] as const;

/** Bowed tile stands less proud at a smaller offset, and is allowed more beside a wide joint. */
export const calmBond: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "lippage/expected") return [];
  const { plan, solved } = state.outcome;
  const wall = solved.walls.find(({ wall: { name } }) => name === diagnostic.wall);
  const laid = wall?.lays.find(({ lay }) => isAtHead(lay.origin, diagnostic.range));
  const statement = statementAtHead(state, diagnostic.range);
  if (!laid || statement?.kind !== "lay") return [];
  const bond = statement.body.find((part) => part.kind === "bond");
  const joint = statement.body.find((part) => part.kind === "joint");
  const { lay } = laid;
  const offset = OFFSETS.find((each) => {
    return expectedLippage(inBond(lay, each)) <= mostLippage(plan.limits, laid.joint);
  });
  const fix = (title: string, written: { start: number; end: number }, text: string): Fix => ({
    title,
    mends: diagnostic,
    preferred: false,
    edits: [{ range: state.tree.lines.range(written), text }],
  });
  const fixes: Fix[] = [];
  if (offset && bond?.offset) {
    const text = `${offset.p}/${offset.q}`;
    fixes.push(fix(`Lay the bond at an offset of ${text}`, bond.offset, text));
  }
  const wide = LIPPAGE.wideFrom;
  if (joint && laid.joint < wide && expectedLippage(lay) <= mostLippage(plan.limits, wide)) {
    const written = { start: joint.min.start, end: (joint.max ?? joint.min).end };
    const title = `Widen the joint to ${formatLength(wide, plan.units)}`;
    fixes.push(fix(title, written, exactLength(wide, plan.units)));
  }
  return fixes;
};

function inBond(lay: Lay, { p, q }: { p: number; q: number }): Pick<Lay, "tile" | "bond"> {
  const bond: Bond = { kind: "running", p, q };
  return { tile: lay.tile, bond };
}

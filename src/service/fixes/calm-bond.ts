import type { Syntax } from "../../language/index.js";
import { exactLength, formatLength } from "../../measure/index.js";
import type { Diagnostic, Limits } from "../../model/index.js";
import { expectedLippage, LIPPAGE, mostLippage } from "../../rules/index.js";
import type { SolvedLay } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import { offsetEdit, offsetText, type Offset } from "./bond-offset.js";
import type { Fix, Fixer } from "./fix.js";
import { laysAtHead } from "./lays-at-head.js";
import { statementAtHead } from "./statement-at-head.js";

/** The offsets of a running bond at which a bow shows less than at half, the largest first. */
const OFFSETS: readonly Offset[] = [
  { p: 1, q: 3 },
  { p: 1, q: 4 },
];

/** Bowed tile stands less proud at a smaller offset, and is allowed more beside a wide joint. */
export const calmBond: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "lippage/expected") return [];
  const lays = laysAtHead(state, diagnostic);
  const statement = statementAtHead(state, diagnostic.range);
  if (lays.length === 0 || !statement) return [];
  return [
    ...atSmallerOffset(state, diagnostic, statement, lays),
    ...withWideJoint(state, diagnostic, statement, lays),
  ];
};

function atSmallerOffset(
  state: DocumentState,
  mends: Diagnostic,
  statement: Syntax.Statement,
  lays: readonly SolvedLay[],
): Fix[] {
  const { limits } = state.outcome.plan;
  const offset = OFFSETS.find((each) =>
    lays.every(({ lay: { tile }, joint }) => {
      const bond = { kind: "running", ...each } as const;
      return expectedLippage({ tile, bond }) <= mostLippage(limits, joint);
    }),
  );
  const edit = offset && offsetEdit(state, statement, offset);
  if (!edit) return [];
  const title = `Lay the bond at an offset of ${offsetText(offset)}`;
  return [{ title, mends, preferred: false, edits: [edit] }];
}

function withWideJoint(
  state: DocumentState,
  mends: Diagnostic,
  statement: Syntax.Statement,
  lays: readonly SolvedLay[],
): Fix[] {
  const { limits, units } = state.outcome.plan;
  const written = jointOf(statement);
  const wide = LIPPAGE.wideFrom;
  if (!written || !isMendedBy(limits, lays)) return [];
  const title = `Widen the joint to ${formatLength(wide, units)}`;
  const edit = { range: state.tree.lines.range(written), text: exactLength(wide, units) };
  return [{ title, mends, preferred: false, edits: [edit] }];
}

/** Whether wide joints, where there are none, allow all that is told of these lays. */
function isMendedBy(limits: Limits, lays: readonly SolvedLay[]): boolean {
  const wide = LIPPAGE.wideFrom;
  return lays.every(
    ({ joint, lay }) => joint < wide && expectedLippage(lay) <= mostLippage(limits, wide),
  );
}

/** Where a lay's or a lining's joint is written; null where it isn't. */
function jointOf(statement: Syntax.Statement): { start: number; end: number } | null {
  if (statement.kind === "lining") return statement.joint;
  if (statement.kind !== "lay") return null;
  const joint = statement.body.find((part) => part.kind === "joint");
  return joint ? { start: joint.min.start, end: (joint.max ?? joint.min).end } : null;
}

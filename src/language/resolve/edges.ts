import { NM_PER } from "../../measure/index.js";
import type { Edge, EdgeJoint, Meeting, Side, Trim } from "../../model/index.js";
import type { EdgeStatement, Word } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import { resolveReadings } from "./readings.js";
import type { WallDraft, WallDrafts } from "./wall-draft.js";

/** A side that the plan leaves unsaid is a wall with a soft joint of 1/8 in. */
const DEFAULT_JOINT: EdgeJoint = { kind: "movement", width: NM_PER.inch / 8 };

/** The four sides of a wall. */
export function resolveEdges(draft: WallDraft, all: WallDrafts): Record<Side, Edge> {
  const stated = new Map<Side, EdgeStatement>();
  const { report } = draft.scope;
  for (const edge of draft.parts.all("edge")) {
    const first = stated.get(edge.side);
    if (!first) stated.set(edge.side, edge);
    else {
      const message = `found \`${edge.side}\` again, wanted each side once`;
      const related = [report.place(first.head, "the first one")];
      report.tell("plan/said-twice", edge.head, message, { wall: draft.name, related });
    }
  }
  const edgeOf = (side: Side): Edge => {
    const statement = stated.get(side);
    return statement ? resolveEdge(statement, draft, all) : defaultEdge(side, draft);
  };
  return {
    left: edgeOf("left"),
    right: edgeOf("right"),
    bottom: edgeOf("bottom"),
    top: edgeOf("top"),
  };
}

function defaultEdge(side: Side, { origin }: WallDraft): Edge {
  return {
    side,
    meets: { kind: "wall" },
    measured: [],
    outlined: false,
    joint: DEFAULT_JOINT,
    stated: false,
    origin,
  };
}

function resolveEdge(statement: EdgeStatement, draft: WallDraft, all: WallDrafts): Edge {
  const { side } = statement;
  const measured = onlyClause(statement, "measured", draft);
  return {
    side,
    meets: resolveMeeting(statement, draft, all),
    measured: measured ? resolveReadings(measured, side, draft) : [],
    outlined: false,
    joint: resolveJoint(statement, draft),
    stated: true,
    origin: draft.scope.report.origin(statement),
  };
}

function onlyClause<Kind extends "measured" | "joint-clause">(
  statement: EdgeStatement,
  kind: Kind,
  { scope, name }: WallDraft,
): Extract<EdgeStatement["clauses"][number], { kind: Kind }> | undefined {
  type Clause = Extract<EdgeStatement["clauses"][number], { kind: Kind }>;
  const [first, second] = statement.clauses.filter(
    (clause): clause is Clause => clause.kind === kind,
  );
  if (first && second) {
    const what = kind === "measured" ? "`measured`" : "a joint";
    const related = [scope.report.place(first.head, "the first one")];
    const message = `found ${what} again, wanted it once for a side`;
    scope.report.tell("plan/said-twice", second.head, message, { wall: name, related });
  }
  return first;
}

function resolveJoint(statement: EdgeStatement, draft: WallDraft): EdgeJoint | null {
  const clause = onlyClause(statement, "joint-clause", draft);
  const width = clause && lengthOf(clause.width, "not-negative", draft.scope, draft.name);
  return clause && width !== null && width !== undefined ? { kind: clause.joint, width } : null;
}

/** A corner with a wall that can't be drawn is taken for a plain wall, which it is at the least. */
function resolveMeeting(
  { meets, head, side }: EdgeStatement,
  draft: WallDraft,
  all: WallDrafts,
): Meeting {
  const { report } = draft.scope;
  if (meets.kind === "plain") return { kind: meets.what };
  if (meets.kind === "free") {
    return { kind: "free", trim: meets.trim ? findTrim(meets.trim, draft) : null };
  }
  const { wall } = meets;
  const tell = (
    code: "plan/corner-self" | "plan/corner-side",
    at: typeof head,
    message: string,
  ): void => report.tell(code, at, message, { wall: draft.name });
  if (side === "bottom" || side === "top") {
    tell(
      "plan/corner-side",
      head,
      `found a corner at the ${side}, wanted it at the left or the right`,
    );
  } else if (wall.text === draft.name) {
    tell(
      "plan/corner-self",
      wall,
      `found a corner of \`${draft.name}\` with itself, wanted another wall`,
    );
  } else {
    const other = all.names.find(wall.text);
    if (other?.value) return cornerMeeting(meets, draft);
    if (!other) all.names.tellUnknown(wall, report, draft.name);
  }
  return { kind: "wall" };
}

function cornerMeeting(
  meets: EdgeStatement["meets"] & { readonly kind: "corner" | "outside" },
  draft: WallDraft,
): Meeting {
  const wall = meets.wall.text;
  if (meets.kind === "corner") return { kind: "corner", wall, lap: meets.lap.text };
  if (!("trim" in meets)) return { kind: "outside", wall, lap: meets.lap.text };
  const trim = meets.trim ? findTrim(meets.trim, draft) : null;
  return { kind: "outside", wall, lap: "over", trim };
}

/** The trim of that name; null, and told, where there is none. */
export function findTrim(name: Word, { scope, name: wall }: WallDraft): Trim | null {
  const declared = scope.trims.find(name.text);
  if (declared) return declared.value;
  if (scope.tiles.find(name.text)) {
    const message = `found the tile \`${name.text}\`, wanted a trim`;
    scope.report.tell("plan/name-unknown", name, message, { wall });
  } else scope.trims.tellUnknown(name, scope.report, wall);
  return null;
}

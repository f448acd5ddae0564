import { formatLength, type Nm } from "../../measure/index.js";
import type { LayArea, LayBound, Side } from "../../model/index.js";
import type { CoversStatement, LayPart } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import type { Parts } from "./parts.js";
import { resolveBetween } from "./soft-joints.js";
import type { WallDraft } from "./wall-draft.js";

type Bounds = Partial<Record<Side, LayBound>>;

/** The side at which a lay ends that covers the wall from the other side. */
const ENDS: Readonly<Record<CoversStatement["from"], Side>> = {
  left: "right",
  right: "left",
  bottom: "top",
  top: "bottom",
};

/** What a lay says of its own place: up to where it covers the wall, or where its panel stands. */
export function resolveArea(
  parts: Parts<LayPart>,
  draft: WallDraft,
): Pick<LayArea, "bounds" | "joint"> {
  const { scope, name: wall } = draft;
  const joint = resolveBetween(parts.first("between"), draft);
  const bounds: Bounds = { ...panelBounds(parts, draft) };
  for (const statement of parts.all("covers")) {
    const at = lengthOf(statement.to, "any", scope, wall);
    const side = ENDS[statement.from];
    if (at === null) continue;
    if (bounds[side]) {
      const message = `found where it ends at the ${side} again, wanted it once for a side`;
      scope.report.tell("plan/said-twice", statement.head, message, { wall });
    } else if (isInWall(at, side, statement, draft)) bounds[side] = { kind: "place", at };
  }
  return { bounds: keepOpen(bounds, parts, draft), joint };
}

/** A place on the wall, told where it isn't. */
function isInWall(
  at: Nm,
  side: Side,
  { to }: CoversStatement,
  { size, scope, name: wall }: WallDraft,
): boolean {
  const most = side === "left" || side === "right" ? size.across : size.up;
  if (at > 0 && at < most) return true;
  const [found, end] = [at, most].map((nm) => formatLength(nm, scope.units));
  const message = `found ${found!}, wanted a place within the wall, between 0 and ${end!}`;
  scope.report.tell("plan/lay-area", to, message, { wall });
  return false;
}

/** A panel's four bounds, from its lower left corner and its size. */
function panelBounds(parts: Parts<LayPart>, draft: WallDraft): Bounds {
  const { scope, name: wall } = draft;
  const [at, size] = [parts.first("at"), parts.first("size")];
  if (!at && !size) return {};
  if (!at?.y || !size || at.xTo || at.yTo || size.upTo) {
    const message =
      "found a part of a panel's place, wanted `at` with its lower left corner and `size`, such as `at 12, 48` and `size 30 x 18`";
    scope.report.tell("plan/lay-area", (at ?? size)!.head, message, { wall });
    return {};
  }
  const [x, y] = [lengthOf(at.x, "any", scope, wall), lengthOf(at.y, "any", scope, wall)];
  const across = lengthOf(size.first, "positive", scope, wall);
  const up = lengthOf(size.second, "positive", scope, wall);
  if (x === null || y === null || across === null || up === null) return {};
  const { across: wide, up: high } = draft.size;
  const shown = (nm: Nm): string => formatLength(nm, scope.units);
  if (x < 0 || y < 0 || x + across > wide || y + up > high) {
    const [found, room] = [
      `${shown(x + across)}, ${shown(y + up)}`,
      `${shown(wide)}, ${shown(high)}`,
    ];
    const message = `found a panel from ${shown(x)}, ${shown(y)} to ${found}, wanted it within the wall, from 0, 0 to ${room}`;
    scope.report.tell("plan/lay-area", at.head, message, { wall });
    return {};
  }
  const place = (nm: Nm): LayBound => ({ kind: "place", at: nm });
  return { left: place(x), right: place(x + across), bottom: place(y), top: place(y + up) };
}

/** Bounds that leave nothing between them are told, and left out. */
function keepOpen(bounds: Bounds, parts: Parts<LayPart>, { scope, name: wall }: WallDraft): Bounds {
  const closed = (["left right", "bottom top"] as const).flatMap((sides) => {
    const [from, to] = sides.split(" ").map((side) => bounds[side as Side]);
    const isClosed = from?.kind === "place" && to?.kind === "place" && from.at >= to.at;
    return isClosed ? [[from.at, to.at] as const] : [];
  });
  const [ends] = closed;
  if (!ends) return bounds;
  const [from, to] = ends.map((nm) => formatLength(nm, scope.units));
  const head = (parts.first("at") ?? parts.all("covers").at(-1)!).head;
  const message = `found a lay from ${from!} to ${to!}, wanted its first end before its other one`;
  scope.report.tell("plan/lay-area", head, message, { wall });
  return {};
}

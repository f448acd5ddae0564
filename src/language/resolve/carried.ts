import type { CarriedStart, Wall } from "../../model/index.js";
import type { AcrossStatement } from "../syntax.js";
import { placeOf, type Report } from "./report.js";
import type { WallDraft, WallDrafts } from "./wall-draft.js";

type WrittenCarried = Extract<AcrossStatement["choice"], { readonly kind: "wrapped" | "mirrored" }>;

const ENDS = ["left", "right"] as const;

/** A start that goes on from another wall; null, and told, where no one corner joins the two. */
export function resolveCarried(
  choice: WrittenCarried,
  { name, parts, scope }: WallDraft,
  all: WallDrafts,
): CarriedStart | null {
  const wall = choice.wall.text;
  const { report } = scope;
  const other = all.names.find(wall);
  if (!other) {
    all.names.tellUnknown(choice.wall, report, name);
    return null;
  }
  // A wall that can't be drawn has been told.
  if (!other.value) return null;
  const corners = ENDS.filter((side) =>
    parts
      .all("edge")
      .some((edge) => edge.side === side && "wall" in edge.meets && edge.meets.wall.text === wall),
  );
  const [corner, second] = corners;
  if (wall === name || !corner || second) {
    const found = second ? "corners at both ends with" : "no corner with";
    const message = `found ${found} \`${wall}\`, wanted a wall that this one meets at one corner`;
    const related = [placeOf(other.origin, `the wall \`${wall}\``)];
    report.tell("plan/start-corner", choice.wall, message, { wall: name, related });
    return null;
  }
  return choice.kind === "wrapped"
    ? { kind: "wrapped", wall, corner, joint: choice.joint }
    : { kind: "mirrored", wall, corner };
}

/**
 * Leaves one start of every circle to the solver: the first wall's of the text, which is told. A start is
 * worked out from the other wall's end, so that round a whole room one has to stand by itself.
 */
export function breakCircles(walls: readonly Wall[], all: WallDrafts, report: Report): Wall[] {
  const kept = new Map(walls.map((wall) => [wall.name, wall]));
  for (const { name, lays } of walls) {
    for (const [i, { across }] of lays.entries()) {
      const way = across && "wall" in across ? wayBack(across.wall, name, kept) : null;
      if (!way) continue;
      const wall = kept.get(name)!;
      const open = wall.lays.map((lay, k) => (k === i ? { ...lay, across: null } : lay));
      kept.set(name, { ...wall, lays: open });
      tellCircle([name, ...way], all, report);
    }
  }
  return [...kept.values()];
}

function tellCircle(
  [name, from, ...rest]: readonly string[],
  all: WallDrafts,
  report: Report,
): void {
  const draft = all.names.find(name!)!.value!;
  const statement = draft.parts
    .all("lay")
    .flatMap(({ body }) => body.filter((each) => each.kind === "across"))
    .find(({ choice }) => "wall" in choice && choice.wall.text === from);
  const words = [name!, from!, ...rest].map((each) => `\`${each}\``).join(", ");
  const message =
    `found starts that go round in a circle (${words}), wanted one wall with a start of its own: ` +
    "a bond that goes on all round a room can't close at its last corner";
  report.tell("plan/start-circle", (statement ?? draft.statement).head, message, { wall: name! });
}

/** The walls from one to another, each started from the next; null where they don't come to it. */
function wayBack(
  from: string,
  to: string,
  walls: ReadonlyMap<string, Wall>,
  passed: readonly string[] = [],
): string[] | null {
  if (from === to) return [...passed, to];
  if (passed.includes(from)) return null;
  for (const { across } of walls.get(from)?.lays ?? []) {
    if (!across || !("wall" in across)) continue;
    const way = wayBack(across.wall, to, walls, [...passed, from]);
    if (way) return way;
  }
  return null;
}

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
  for (const { name } of walls) {
    const round = roundFrom(name, kept);
    if (!round) continue;
    const wall = kept.get(name)!;
    const lays = wall.lays.map((lay, i) => (i === 0 ? { ...lay, across: null } : lay));
    kept.set(name, { ...wall, lays });
    const draft = all.names.find(name)!.value!;
    const [lay] = draft.parts.all("lay");
    const statement = lay?.body.find(({ kind }) => kind === "across");
    const words = round.map((each) => `\`${each}\``).join(", ");
    const message =
      `found starts that go round in a circle (${words}), wanted one wall with a start of its own: ` +
      "a bond that goes on all round a room can't close at its last corner";
    report.tell("plan/start-circle", (statement ?? draft.statement).head, message, { wall: name });
  }
  return [...kept.values()];
}

/** The walls from one back to itself, each started from the next; null where they don't come back. */
function roundFrom(name: string, walls: ReadonlyMap<string, Wall>): string[] | null {
  const round = [name];
  for (;;) {
    const across = walls.get(round.at(-1)!)?.lays[0]?.across;
    if (!across || !("wall" in across)) return null;
    if (across.wall === name) return [...round, name];
    if (round.includes(across.wall)) return null;
    round.push(across.wall);
  }
}

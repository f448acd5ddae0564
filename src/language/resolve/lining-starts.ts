import type { InsideAcross, InsideFace, InsideUp } from "../../model/index.js";
import type { LiningAcross, LiningStatement, LiningUp } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import type { WallDraft } from "./wall-draft.js";

/** Where a lining starts on one surface; null: as is usual there. */
export interface LiningStart {
  readonly across: InsideAcross | null;
  readonly up: InsideUp | null;
}

type Of = LiningStatement["of"];

/** The surfaces that run into the wall across, and up, as they are folded out round the back. */
const RUN_INWARDS: Readonly<Record<"across" | "up", readonly Of[]>> = {
  across: ["sides"],
  up: ["sill", "head"],
};

/**
 * The start of a lining for each surface that it is of. A start that makes no sense on all of them is told at its place,
 * and left out. `opening` is the name of the opening that it lines.
 */
export function resolveLiningStart(
  { of, across, up }: LiningStatement,
  opening: string | null,
  draft: WallDraft,
): (face: InsideFace) => LiningStart {
  const tell = (at: { start: number; end: number }, message: string): void => {
    draft.scope.report.tell("plan/inside", at, message, { wall: draft.name });
  };
  const acrossFault = across && faultAcross(of, across, opening);
  const upFault = up && faultUp(of, up);
  if (acrossFault) tell(across, acrossFault);
  if (upFault) tell(up, upFault);
  const ownAcross = across && !acrossFault ? acrossOf(across, draft) : null;
  const ownUp = up && !upFault ? upOf(up, draft) : null;
  return (face) => ({
    across: ownAcross?.(face) ?? null,
    up: ownUp?.(face) ?? null,
  });
}

/** What is wrong with a start across on these surfaces. */
function faultAcross(of: Of, { choice }: LiningAcross, opening: string | null): string | null {
  const runsIn = RUN_INWARDS.across.includes(of);
  const own = opening ?? "its name";
  if (choice.kind === "full-tile") {
    const isInwards = choice.from === "front" || choice.from === "back";
    if (of !== "inside" && isInwards === runsIn) return null;
    return `found a full tile from the ${choice.from} ${onWords(of)}, wanted ${acrossWanted(of, own)}`;
  }
  if (choice.kind === "centred-on" && choice.name.text === opening) return null;
  if (choice.kind === "centred-on" && choice.name.text !== "wall") {
    const { text } = choice.name;
    return `found a start centred on \`${text}\` ${onWords(of)}, wanted ${acrossWanted(of, own)}`;
  }
  if (of !== "inside" && !runsIn) return null;
  const found = choice.kind === "centred-on" ? "on the wall" : "at a place of the wall";
  return `found a start centred ${found} ${onWords(of)}, wanted ${acrossWanted(of, own)}`;
}

function faultUp(of: Of, { choice }: LiningUp): string | null {
  const runsIn = RUN_INWARDS.up.includes(of);
  const isInwards =
    choice.kind === "full-course" && (choice.from === "front" || choice.from === "back");
  if (of !== "inside" && isInwards === runsIn) return null;
  const found =
    choice.kind === "joint" ? "a joint at a height" : `a full course from the ${choice.from}`;
  const wanted = runsIn
    ? "`full course from front` or `from back`, since it runs into the wall"
    : of === "inside"
      ? "it of one surface, such as `back`"
      : "`full course from bottom` or `from top`, or `joint at` a height";
  return `found ${found} ${onWords(of)}, wanted ${wanted}`;
}

function acrossWanted(of: Of, own: string): string {
  if (of === "sides") {
    return `\`full tile from front\` or \`from back\`, or \`centred on ${own}\`, since they run into the wall`;
  }
  if (of === "inside") return `\`centred on ${own}\`, or it of one surface, such as \`back\``;
  return `\`full tile from left\` or \`from right\`, or one centred on \`${own}\`, on \`wall\` or at a place`;
}

function onWords(of: Of): string {
  return of === "inside" ? "of all surfaces" : of === "sides" ? "of the sides" : `of the ${of}`;
}

function acrossOf(
  { choice }: LiningAcross,
  { scope, name: wall }: WallDraft,
): ((face: InsideFace) => InsideAcross) | null {
  if (choice.kind === "full-tile") {
    const { from } = choice;
    if (from === "left" || from === "right") return () => ({ kind: "full-tile", from });
    // The front of the left side is at its left, as it is folded out, that of the right side at its right.
    return (face) => {
      const isLeft = (face === "left") === (from === "front");
      return { kind: "full-tile", from: isLeft ? "left" : "right" };
    };
  }
  const kind = choice.what;
  if (choice.kind === "centred-on") {
    const on = choice.name.text === "wall" ? "wall" : "surface";
    return () => ({ kind, centre: { on } });
  }
  const x = lengthOf(choice.x, "any", scope, wall);
  return x === null ? null : () => ({ kind, centre: { on: "place", x } });
}

function upOf(
  { choice }: LiningUp,
  { scope, name: wall }: WallDraft,
): ((face: InsideFace) => InsideUp) | null {
  if (choice.kind === "joint") {
    const y = lengthOf(choice.y, "any", scope, wall);
    return y === null ? null : () => ({ kind: "joint", y });
  }
  const { from } = choice;
  if (from === "bottom" || from === "top") return () => ({ kind: "full-course", from });
  // Folded out, the front is the sill's bottom and the head's top.
  return (face) => {
    const isBottom = (face === "sill") === (from === "front");
    return { kind: "full-course", from: isBottom ? "bottom" : "top" };
  };
}

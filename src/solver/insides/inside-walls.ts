import type { Nm } from "../../measure/index.js";
import {
  type Edge,
  type EdgeJoint,
  faceWords,
  INSIDE_FACES,
  type Inside,
  type InsideFace,
  type Opening,
  type Plan,
  type Side,
  type Wall,
} from "../../model/index.js";
import type { SolvedLay } from "../solved.js";
import { insideLay, type LiningLay } from "./inside-lay.js";
import { fallOver, type Front, frontOf, levelRun, slopeLength } from "./inside-size.js";

/** An opening whose surfaces are tiled, on its wall. */
export interface InsidePlot {
  readonly plan: Plan;
  readonly wall: Wall;
  readonly opening: Opening;
  readonly inside: Inside;
  /** The lay round the opening. */
  readonly round: SolvedLay;
}

/** A surface inside an opening, as a wall of its own with one lay. */
export interface InsideWall {
  readonly face: InsideFace;
  readonly wall: Wall;
  readonly lay: LiningLay;
  readonly front: Front;
}

/** The name of a surface: it has the wall's and the opening's before it, and no wall can be called so. */
export function insideName(wall: string, opening: string, face: InsideFace): string {
  return `${wall}.${opening}.${face}`;
}

/**
 * The surfaces inside an opening as walls, each as one sees it when they are folded out round the back: the sill
 * below it, the head over it, the sides beside it. x and y of the back, and the sides' y, begin at the
 * opening's lower left corner (the back's at its own foot, where the sill has risen to). The back is set
 * first and the others cover its edges; the sides stand between the sill and the head, as a butted frame's jambs do
 * (common practice). Of a window there is no back: the others end at it.
 */
export function insideWalls(plot: InsidePlot): InsideWall[] {
  const { opening } = plot;
  return INSIDE_FACES.filter((face) => face !== "back" || opening.kind === "niche").map((face) =>
    insideWall(plot, face),
  );
}

function insideWall(plot: InsidePlot, face: InsideFace): InsideWall {
  const { plan, wall, opening, inside, round } = plot;
  const lay = insideLay(opening, inside, face, round);
  const front = frontOf(plan, opening, { tile: lay.tile, joint: lay.joint.min }, round.lay.tile);
  const run = levelRun(inside, front);
  const around = `${wall.title || wall.name}, ${opening.kind} ${opening.name}`;
  return {
    face,
    lay,
    front,
    wall: {
      name: insideName(wall.name, opening.name, face),
      title: `${around}: ${faceWords(face)}`,
      size: sizeOf(plot, face, run),
      stop: null,
      edges: edgesOf(plot, face, front, run),
      outline: null,
      steps: [],
      risers: [],
      legs: [],
      openings: [],
      holes: [],
      lays: [lay],
      allows: [...opening.allows, ...wall.allows],
      origin: opening.origin,
    },
  };
}

function sizeOf(
  { opening: { size }, inside }: InsidePlot,
  face: InsideFace,
  run: Nm,
): Wall["size"] {
  switch (face) {
    case "back":
      return { across: size.across, up: size.up - (inside.fall ?? 0) };
    case "left":
    case "right":
      return { across: run, up: size.up };
    case "sill":
      return { across: size.across, up: slopeLength(inside, run) };
    case "head":
      return { across: size.across, up: run };
  }
}

function edgesOf(plot: InsidePlot, face: InsideFace, front: Front, run: Nm): Wall["edges"] {
  const { opening, wall } = plot;
  const joint: EdgeJoint = {
    kind: "movement",
    width: opening.movement ?? plot.round.joint,
  };
  const edge = (side: Side, meets: Edge["meets"], own: EdgeJoint | null = joint): Edge => ({
    side,
    meets,
    measured: [],
    outlined: false,
    joint: own,
    stated: true,
    origin: opening.origin,
  });
  const corner = (side: Side, other: InsideFace, lap: "under" | "over"): Edge =>
    edge(side, { kind: "corner", wall: insideName(wall.name, opening.name, other), lap });
  const atFront = (side: Side): Edge =>
    front.joint === null
      ? edge(side, { kind: "free", trim: null }, null)
      : edge(side, { kind: "wall" }, { kind: "joint", width: front.joint });
  const atBack = (side: Side): Edge =>
    opening.kind === "niche" ? corner(side, "back", "over") : edge(side, { kind: "wall" });
  switch (face) {
    case "back":
      return {
        left: corner("left", "left", "under"),
        right: corner("right", "right", "under"),
        bottom: corner("bottom", "sill", "under"),
        top: corner("top", "head", "under"),
      };
    case "left":
    case "right": {
      const [out, back] =
        face === "left" ? (["left", "right"] as const) : (["right", "left"] as const);
      const bottom = corner("bottom", "sill", "over");
      return {
        ...({ [out]: atFront(out), [back]: atBack(back) } as Pick<Wall["edges"], "left" | "right">),
        bottom: { ...bottom, ...slopeUnder(plot, face, run) },
        top: corner("top", "head", "over"),
      };
    }
    case "sill":
    case "head": {
      const [out, back] =
        face === "sill" ? (["bottom", "top"] as const) : (["top", "bottom"] as const);
      return {
        left: corner("left", "left", "under"),
        right: corner("right", "right", "under"),
        ...({ [out]: atFront(out), [back]: atBack(back) } as Pick<Wall["edges"], "bottom" | "top">),
      };
    }
  }
}

/** The sill under a side: level with the opening's bottom at the substrate, risen by the fall at the back. */
function slopeUnder(
  { inside }: InsidePlot,
  face: "left" | "right",
  run: Nm,
): Pick<Edge, "measured" | "outlined"> {
  const fall = inside.fall ?? 0;
  if (fall === 0) return { measured: [], outlined: false };
  const front = fall - fallOver(inside, run);
  const [first, last] = face === "left" ? [front, fall] : [fall, front];
  return {
    measured: [
      { at: 0, off: first },
      { at: run, off: last },
    ],
    outlined: true,
  };
}

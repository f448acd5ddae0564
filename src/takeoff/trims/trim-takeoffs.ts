import type { Nm } from "../../measure/index.js";
import { edgeTrim, type Side, type Trim } from "../../model/index.js";
import type { SolvedPlan, TrimRun } from "../../solver/index.js";
import { alphabetical } from "../alphabetical.js";
import { kerfOf } from "../saw-work.js";
import type { TrimCut, TrimPlace, TrimTakeoff } from "../takeoff.js";
import { mitreHands } from "./mitre-hands.js";
import { type CutLength, trimsFor } from "./share-trims.js";

/** A length of trim as it is cut, and where it goes. */
interface Length {
  readonly length: Nm;
  readonly mitred: TrimCut["mitred"];
  readonly whole: boolean;
  readonly ends: CutLength["ends"];
  readonly place: TrimPlace;
}

/** What every trim that is set takes, in the order of the plan. */
export function trimTakeoffs({ plan, walls }: SolvedPlan): TrimTakeoff[] {
  const runs = walls.flatMap(({ wall, trims }) => trims.map((run) => ({ wall: wall.name, run })));
  return plan.trims.flatMap((trim) => {
    const own = runs.filter(({ run }) => trimOf(run) === trim);
    const lengths = own.flatMap(({ wall, run }) => lengthsOf(wall, run));
    if (lengths.length === 0) return [];
    const cut = lengths.filter(({ whole }) => !whole);
    const stock = { along: trim.face.along, kerf: kerfOf(plan) };
    const bought = lengths.length - cut.length + trimsFor(cut, stock);
    return [
      {
        trim,
        pieces: cutsOf(lengths),
        length: own.reduce((sum, { run }) => sum + run.length, 0),
        bought,
        cost: trim.price === null ? null : { hundredths: bought * trim.price },
      },
    ];
  });
}

function trimOf({ along }: TrimRun): Trim | null {
  if ("opening" in along) return along.opening.frame?.trim ?? null;
  return edgeTrim(along.edge.meets);
}

function lengthsOf(wall: string, run: TrimRun): Length[] {
  const place = { wall, along: alongWords(run) };
  return run.pieces.map((piece) => ({
    length: piece.length,
    mitred: mitreHands(finishedFrom(run), piece.mitre),
    whole: piece.whole,
    // A run's only length ends in corners; others meet their neighbour with the end that the factory made.
    ends: run.pieces.length > 1 ? 1 : 0,
    place,
  }));
}

/** `sash bottom`; of the wall's own sides `left end`, `top edge`. */
function alongWords({ along, side }: TrimRun): string {
  if ("opening" in along) return `${along.opening.name} ${side}`;
  return `${side} ${isLevel(side) ? "edge" : "end"}`;
}

/** A frame's finished edge is the one towards its opening, an end's the outer one, as if it framed what lies beyond. */
function finishedFrom({ along, side }: TrimRun): Side {
  return "opening" in along ? side : BEYOND[side];
}

const BEYOND: Readonly<Record<Side, Side>> = {
  left: "right",
  right: "left",
  bottom: "top",
  top: "bottom",
};

function isLevel(side: Side): boolean {
  return side === "bottom" || side === "top";
}

/** Equal lengths together: whole ones first, then the longest. */
function cutsOf(lengths: readonly Length[]): TrimCut[] {
  const alike = new Map<string, Length[]>();
  for (const each of lengths) {
    const key = JSON.stringify([each.length, each.mitred, each.whole]);
    const others = alike.get(key);
    if (others) others.push(each);
    else alike.set(key, [each]);
  }
  return [...alike.values()]
    .map((equal) => {
      const { length, mitred, whole } = equal[0]!;
      return { length, count: equal.length, mitred, whole, where: equal.map(({ place }) => place) };
    })
    .sort(
      (a, b) =>
        Number(b.whole) - Number(a.whole) ||
        b.length - a.length ||
        alphabetical(a.mitred.join(), b.mitred.join()),
    );
}

import type { Nm } from "../measure/index.js";
import {
  isInside,
  type Lattice,
  moduleUp,
  type SolvedInside,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE } from "./trade.js";
import { length } from "./words.js";

/**
 * A niche's back, laid otherwise than the wall, whose bed joints don't meet those of the wall round it: the eye
 * runs along a joint of the wall and finds none behind. Upright joints hardly ever could, in another tile.
 */
export const openingBackOffJoint: Rule = {
  code: "opening/back-off-joint",
  severity: "information",
  title: "the joints of a niche's back don't go on from the wall's",
  source: COMMON_PRACTICE,
  limit: null,
  insides: "own lay",
  check: (surface, plan) =>
    isInside(surface) && surface.face === "back"
      ? surface.lays.flatMap((lay) => findOff(surface, lay, plan))
      : [],
};

function findOff(back: SolvedInside, own: SolvedLay, plan: SolvedPlan): Finding[] {
  const wall = plan.walls.find(({ insides }) => insides.includes(back));
  const round = wall && layRound(wall, back);
  if (!round) return [];
  const off = worstOff(back, own.lattice, round.lattice);
  if (off === 0) return [];
  return [
    {
      origin: own.lay.origin,
      blocks: [own.lay, back.opening, own.lay.tile, wall.wall],
      message:
        `its bed joints are up to ${length(plan, off)} off the wall's; joints that go on are wanted: of tile that ` +
        `comes with its joint to ${length(plan, moduleUp(round.lattice))}, or to a whole part of it`,
    },
  ];
}

function layRound({ lays }: SolvedWall, { opening }: SolvedInside): SolvedLay | undefined {
  return lays.find(({ region }) => region.takeaways.some((each) => each.opening === opening));
}

/**
 * How far a bed joint of the wall at the height of the back is from the back's nearest, by their middles, nm
 * (rounded up): the most of all of them. 0 where there is none.
 */
function worstOff({ opening, region }: SolvedInside, own: Lattice, wall: Lattice): Nm {
  const foot = opening.at.y + (opening.inside?.fall ?? 0);
  const [step, module] = [2 * moduleUp(own), 2 * moduleUp(wall)];
  // Middles are told twice over, so that they are whole.
  const middle = ({ y, face }: Lattice, up: Nm): Nm => 2 * (y + face.up) + up / 2 - face.up;
  const ownMiddle = middle(own, step);
  const wallMiddle = middle(wall, module) - 2 * foot;
  const { bottom, top } = region.bounds;
  let worst = 0;
  for (let n = Math.ceil((2 * bottom - wallMiddle) / module); ; n++) {
    const at = wallMiddle + n * module;
    if (at > 2 * top) return Math.ceil(worst / 2);
    const past = (((at - ownMiddle) % step) + step) % step;
    worst = Math.max(worst, Math.min(past, step - past));
  }
}

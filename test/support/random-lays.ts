import type { Nm } from "../../src/measure/index.js";
import type { Lay, Plan, Side, Wall } from "../../src/model/index.js";
import { grown, type Box } from "../../src/solver/index.js";
import { window } from "../solver/choose/model-plan.js";
import { area, layOf, past, place, wallOf, type Several } from "../solver/several-lays.js";
import type { Random } from "./random.js";

/** A lay, and where it has to come to be; worked out beside it by no code of the solver. */
export interface Part {
  readonly lay: Lay;
  readonly box: Box;
  /** What of the box other lays have, with the joint round them. */
  readonly patches: readonly Box[];
}

/** A wall of several lays. */
export interface Lays {
  readonly plan: Plan;
  readonly wall: Wall;
  readonly region: Box;
  readonly parts: readonly Part[];
  /** What is between the lays: boxes less others. */
  readonly between: readonly { readonly box: Box; readonly without: readonly Box[] }[];
  /** What openings take. */
  readonly openings: readonly Box[];
}

type Arrangement = Pick<Lays, "parts" | "between">;

/** The joint round an opening. */
const MOVEMENT: Nm = 2;

/** What is random about a wall. */
export interface Kind {
  readonly measured: boolean;
  readonly openings: boolean;
  readonly running: boolean;
}

/** A random wall of two to four lays; lengths are even, so that every half is whole. */
export function randomLays(random: Random, kind: Kind): Lays {
  const size = [even(random, 800, 1600), even(random, 700, 1200)] as const;
  const region: Box = { left: 3, bottom: 3, right: size[0] - 3, top: size[1] - 3 };
  const arrange = random.pick([onEachOther, besideEachOther, besideOnOne, inTheRest]);
  const arrangement = arrange(random, region);
  const lays = arrangement.parts.map(({ lay }) => lay);
  const stated = shuffled(random, lays).map((lay) => ({ ...lay, ...startOf(random, lay, kind) }));
  const parts = arrangement.parts.map((part) => ({
    ...part,
    lay: stated.find(({ name }) => name === part.lay.name)!,
  }));
  const openings = kind.openings ? randomOpenings(random, size) : [];
  const sides = kind.measured ? measuredSides(random, size) : {};
  const { plan, wall } = wallOf(stated, { size, sides, openings });
  const taken = openings.map(({ at, size: { across, up } }) =>
    grown({ left: at.x, bottom: at.y, right: at.x + across, top: at.y + up }, MOVEMENT),
  );
  return { plan, wall, region, parts, between: arrangement.between, openings: taken };
}

export function even(random: Random, low: Nm, high: Nm): Nm {
  return 2 * random.integer(low / 2, high / 2);
}

function onEachOther(random: Random, region: Box): Arrangement {
  return inRow(random, region, ["bottom", "top"]);
}

function besideEachOther(random: Random, region: Box): Arrangement {
  return inRow(random, region, ["left", "right"]);
}

/** Two to four lays, each past the one before; the last has the rest. */
function inRow(random: Random, region: Box, [from, to]: readonly [Side, Side]): Arrangement {
  const many = random.integer(2, 4);
  const step = 2 * Math.floor((region[to] - region[from]) / many / 2);
  const parts: Part[] = [];
  const between = [];
  for (let i = 0; i < many; i++) {
    const before = parts.at(-1);
    const isRest = i === many - 1 && random.chance(0.5);
    const lay = plainLay(random, `lay-${i}`);
    const joint = isRest || random.chance(0.5) ? null : even(random, 2, 12);
    const start = before
      ? before.box[to] + jointOf({ ...lay, area: area({}, { joint }) }, before.lay)
      : region[from];
    if (before)
      between.push({ box: { ...region, [from]: before.box[to], [to]: start }, without: [] });
    const bounds = before ? { [from]: past(before.lay.name) } : {};
    if (i === many - 1) {
      parts.push({
        lay: { ...lay, area: isRest ? null : area(bounds, { joint }) },
        box: { ...region, [from]: start },
        patches: [],
      });
      break;
    }
    const room = region[from] + (i + 1) * step - start;
    const module = lay.tile.face.up + lay.joint.min;
    const courses =
      from === "bottom" && random.chance(0.5) ? Math.max(1, Math.floor(room / module)) : null;
    const end =
      start +
      (courses === null
        ? even(random, 40, 2 * Math.floor(room / 2))
        : courses * module - lay.joint.min);
    const own =
      courses === null
        ? area({ ...bounds, [to]: place(end) }, { joint })
        : area(bounds, { joint, courses });
    parts.push({
      lay: { ...lay, area: own },
      box: { ...region, [from]: start, [to]: end },
      patches: [],
    });
  }
  return { parts, between };
}

/** One from side to side, over it one at the left and the rest beside that. */
function besideOnOne(random: Random, region: Box): Arrangement {
  const top = region.bottom + even(random, 100, 300);
  const right = region.left + even(random, 200, 500);
  const low = {
    ...plainLay(random, "low"),
    area: area({ top: place(top) }, { joint: random.pick([null, 8]) }),
  };
  const left = {
    ...plainLay(random, "left"),
    area: area({ bottom: past("low"), right: place(right) }),
  };
  const rest = plainLay(random, "rest");
  const leftBox = { ...region, bottom: top + jointOf(left, low), right };
  const restBox = {
    ...region,
    bottom: top + jointOf(rest, low),
    left: right + jointOf(rest, left),
  };
  return {
    parts: [
      { lay: low, box: { ...region, top }, patches: [] },
      { lay: left, box: leftBox, patches: [] },
      { lay: rest, box: restBox, patches: [] },
    ],
    between: [{ box: { ...region, bottom: top }, without: [leftBox, restBox] }],
  };
}

/** A panel or a band, or a panel under a band, in the rest. */
function inTheRest(random: Random, region: Box): Arrangement {
  const rest = plainLay(random, "rest");
  const panelBox = boxOf(
    region.left + even(random, 0, 300),
    region.bottom + even(random, 0, 100),
    even(random, 40, 300),
    even(random, 40, 200),
  );
  const bandBottom = region.bottom + even(random, 340, 400);
  const bandBox = { ...region, bottom: bandBottom, top: bandBottom + even(random, 30, 100) };
  const { left, right, bottom, top } = panelBox;
  const joint = () => (random.chance(0.5) ? null : even(random, 2, 12));
  const panel: Lay = {
    ...plainLay(random, "panel"),
    area: area(
      { left: place(left), right: place(right), bottom: place(bottom), top: place(top) },
      { joint: joint() },
    ),
  };
  const band: Lay = {
    ...plainLay(random, "band"),
    area: area({ bottom: place(bandBox.bottom), top: place(bandBox.top) }, { joint: joint() }),
  };
  const both = [
    { lay: panel, box: panelBox },
    { lay: band, box: bandBox },
  ];
  const placed = random.pick([both, both.slice(0, 1), both.slice(1)]);
  const patches = placed.map(({ lay, box }) => grown(box, jointOf(rest, lay)));
  return {
    parts: [
      ...placed.map((part) => ({ ...part, patches: [] })),
      { lay: rest, box: region, patches },
    ],
    between: placed.map(({ box }, i) => ({ box: patches[i]!, without: [box] })),
  };
}

/** As the plan says: what the later one says, else the earlier one, else the wider of their own. */
function jointOf(later: Lay, earlier: Lay): Nm {
  return (
    later.area?.joint?.width ??
    earlier.area?.joint?.width ??
    Math.max(later.joint.min, earlier.joint.min)
  );
}

function boxOf(left: Nm, bottom: Nm, across: Nm, up: Nm): Box {
  return { left, bottom, right: left + across, top: bottom + up };
}

function plainLay(random: Random, name: string): Lay {
  const lay = layOf(name, { width: even(random, 2, 6) });
  const face = { across: even(random, 60, 200), up: even(random, 40, 120) };
  return { ...lay, tile: { ...lay.tile, face } };
}

function startOf(
  random: Random,
  { area: own }: Lay,
  { running }: Kind,
): Pick<Lay, "across" | "up" | "bond"> {
  const q = random.integer(2, 4);
  return {
    bond:
      running && random.chance(0.6)
        ? { kind: "running", p: random.integer(1, q - 1), q }
        : { kind: "stack" },
    across: random.pick<NonNullable<Lay["across"]>>([
      { kind: "full-tile", from: "left" },
      { kind: "full-tile", from: "right" },
      { kind: random.pick(["tile", "joint"]), centre: { on: "wall" } },
    ]),
    up:
      own?.courses != null || random.chance(0.4)
        ? { kind: "full-course", from: "bottom" }
        : random.pick<NonNullable<Lay["up"]>>([
            { kind: "full-course", from: "top" },
            { kind: "joint", y: even(random, 0, 600) },
          ]),
  };
}

function randomOpenings(random: Random, [across, up]: readonly [Nm, Nm]) {
  return Array.from({ length: random.integer(0, 2) }, (_, i) => {
    const size = [even(random, 60, 240), even(random, 60, 240)] as const;
    // One in each half.
    const at = [
      even(random, 0, across / 2 - 260) + (i * across) / 2,
      even(random, 0, up - 260),
    ] as const;
    return window([2 * Math.floor(at[0] / 2), at[1]], size, {
      name: `sash-${i}`,
      movement: MOVEMENT,
    });
  });
}

function measuredSides(
  random: Random,
  [across, up]: readonly [Nm, Nm],
): NonNullable<Several["sides"]> {
  const side = (length: Nm) => ({
    measured: [0, random.integer(1, length - 1), length].map((at) => ({
      at,
      off: random.integer(-20, 20),
    })),
  });
  return { left: side(up), right: side(up), bottom: side(across), top: side(across) };
}

function shuffled<T>(random: Random, list: readonly T[]): T[] {
  const left = [...list];
  const taken: T[] = [];
  while (left.length > 0) taken.push(...left.splice(random.integer(0, left.length - 1), 1));
  return taken;
}

const OPPOSITE = { left: "right", right: "left", bottom: "bottom", top: "top" } as const;

/** The mirror image of a wall with straight sides and lays in stack bond: places, sides and starts change ends. */
export function mirroredLays({ plan, wall }: Lays): { plan: Plan; wall: Wall } {
  const { across } = wall.size;
  const lays = wall.lays.map((lay): Lay => {
    const bounds = Object.entries(lay.area?.bounds ?? {}).map(([name, bound]) => {
      const side = name as Side;
      const isTurned = bound.kind === "place" && OPPOSITE[side] !== side;
      return [OPPOSITE[side], isTurned ? place(across - bound.at) : bound] as const;
    });
    const start = lay.across;
    return {
      ...lay,
      area: lay.area && { ...lay.area, bounds: Object.fromEntries(bounds) },
      across: start?.kind === "full-tile" ? { ...start, from: OPPOSITE[start.from] } : start,
    };
  });
  const openings = wall.openings.map((opening) => ({
    ...opening,
    at: { ...opening.at, x: across - opening.at.x - opening.size.across },
  }));
  const mirror = { ...wall, lays, openings };
  return { plan: { ...plan, walls: [mirror, ...plan.walls.slice(1)] }, wall: mirror };
}

import type { SolvedPlan } from "../../solver/index.js";
import { mitredEdges } from "../../takeoff/index.js";
import { waterOf } from "./water.js";

/** What can hurt in the work that this plan asks for, each with where it is published. */
export function cautionLines(solved: SolvedPlan): string[] {
  const { wet, glazed } = waterOf(solved.plan);
  const cuts = solved.walls.some(({ lays }) => lays.some(({ pieces }) => pieces.count > 0));
  const mitred = solved.walls.some((wall) => mitredEdges(wall).count > 0);
  return [
    ...(cuts ? CUTTING : []),
    ...(mitred ? MITRES : []),
    ...(solved.walls.length > 0 ? BACKING : []),
    ...(wet ? WATER : []),
    ...(glazed ? GLAZING : []),
    "Follow local code, the makers' instructions and a licensed trade; where they say otherwise, they go first.",
  ];
}

const CUTTING = [
  "Cutting tile makes respirable silica dust: cut wet or with extraction, and wear a respirator where the " +
    "table asks for one (OSHA 29 CFR 1926.1153, Table 1).",
  "A saw near water runs on a GFCI, its cord with a drip loop (29 CFR 1926.404(b)(1)).",
];

const MITRES = [
  "A mitred edge is thin and sharp, and throws chips and more dust as it is cut: eye protection, gloves that " +
    "resist cuts when pieces are handled, and nothing stacked or leant on it (common practice).",
];

const BACKING = [
  "Backing from before 1980 is tested for asbestos, from before 1978 for lead, before it is disturbed: " +
    "by a licensed trade.",
];

const WATER = [
  "The wall behind wet tile is waterproofed before tile is set; the waterproofing has cured and the pan has " +
    "passed its flood test, as its maker says.",
];

const GLAZING = [
  "A window in or near a tub or shower needs safety glazing (IRC R308.4.5, from memory): check the local " +
    "edition, and have a licensed trade see to it before tile is set round it.",
];

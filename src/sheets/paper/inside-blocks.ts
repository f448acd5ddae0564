import { faceWords, type Opening } from "../../model/index.js";
import type { SolvedInside, SolvedWall } from "../../solver/index.js";
import type { WallCuts } from "../../takeoff/index.js";
import { plainText } from "../../drawing/index.js";
import { layReading } from "../reading.js";
import { section, table, text } from "./blocks.js";
import { cutsTable } from "./cuts-block.js";
import type { Ground } from "./ground.js";
import { handOffBlocks } from "./hand-offs-block.js";
import type { Block } from "./paper.js";
import { softJointTable } from "./soft-joints-block.js";
import { openingWords, titleOf } from "./words.js";

/** What is set inside each opening of a wall: its surfaces, their cuts and their soft joints. */
export function insideBlocks(ground: Ground, wall: SolvedWall, cuts: WallCuts): Block[] {
  const openings = [...new Set(wall.insides.map(({ opening }) => opening))];
  return openings.flatMap((opening) =>
    section(`Inside ${openingWords(opening)}`, openingBlocks(ground, wall, opening, cuts)),
  );
}

function openingBlocks(
  ground: Ground,
  { insides }: SolvedWall,
  opening: Opening,
  cuts: WallCuts,
): Block[] {
  const faces = insides.filter((inside) => inside.opening === opening);
  const names = new Set(faces.map(({ wall }) => wall.name));
  const own = cuts.insides.filter(({ wall }) => names.has(wall));
  const all: WallCuts = {
    wall: cuts.wall,
    mark: cuts.mark,
    pieces: own.flatMap(({ pieces }) => pieces),
    batches: own.flatMap(({ batches }) => batches),
    insides: [],
  };
  const beads = ground.takeoff.materials.sealant
    .filter((joint) => names.has(joint.wall))
    .map((joint) => {
      const face = faces.find(({ wall }) => wall.name === joint.wall)!;
      return { ...joint, along: `${faceWords(face.face)}, ${joint.along}` };
    });
  return [
    text(stepsWords(opening)),
    table(
      "Surfaces, folded out: their size from the face of the wall's tile to the back, before tile",
      ["Surface", ">Across", ">Up", "Tile", ">Joint", ">Courses", ">Pieces", ">To cut"],
      faces.map((face) => faceRow(ground, face)),
    ),
    ...cutsTable(ground, all),
    ...handOffBlocks(ground, all),
    ...softJointTable(ground, beads),
  ];
}

/** Which goes first is common practice; how it is waterproofed is its maker's and the code's affair. */
function stepsWords({ kind }: Opening): string {
  const order =
    kind === "niche"
      ? "Set the back first, then the sill and the head, then the sides between them"
      : "Set the sill and the head first, then the sides between them";
  return (
    `${order}, with an edge of the factory's at the front. Before tile: its corners are waterproofed and tested ` +
    "as the membrane's maker says, and a sill that gets wet falls towards the room. Follow local code and a licensed trade."
  );
}

function faceRow({ length }: Ground, { face, wall, lays }: SolvedInside): string[] {
  const { across, up } = wall.size;
  const head = [faceWords(face), length(across), length(up)];
  const [lay] = lays;
  if (!lay) return [...head, "no room for tile", "", "", "", ""];
  const { courses, pieces, cuts } = layReading(wall, lay);
  const tile = plainText(titleOf(lay.lay.tile));
  return [...head, tile, length(lay.joint), `${courses}`, `${pieces}`, `${cuts}`];
}

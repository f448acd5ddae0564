import type { SolvedWall } from "../../solver/index.js";
import { layToCome } from "../setting-out/lay-to-come.js";
import { levelMarks, uprightMarks } from "../setting-out/pole-marks.js";
import { text } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block, Page } from "./paper.js";
import { titleOf } from "./words.js";

/** A wall's story poles in true size; null where nothing is laid. */
export function polePage({ solved }: Ground, wall: SolvedWall): Omit<Page, "id"> | null {
  const lay = layToCome(wall);
  if (!lay || lay.pieces.count === 0) return null;
  const name = titleOf(wall.wall);
  const of = { wall, lay, units: solved.plan.units };
  const [upright, level] = [uprightMarks(of), levelMarks(of)];
  const blocks: Block[] = [
    text(
      "True size where it is printed at 100 %, without fitting to the page: hold a tape against the scale " +
        "before you trust it. Every mark is rounded from its own exact height, none from the mark before it.",
    ),
    {
      kind: "pole",
      caption: `${name}: heights from the datum`,
      direction: "up",
      from: upright[0]!.at,
      to: upright.at(-1)!.at,
      marks: upright,
    },
    {
      kind: "pole",
      caption: `${name}: places from the left end of the bare wall`,
      direction: "across",
      from: level[0]!.at,
      to: level.at(-1)!.at,
      marks: level,
    },
  ];
  return { title: `Story poles: ${name}`, wall: wall.wall.name, blocks };
}

import { siteChecks } from "../setting-out/site-checks.js";
import type { SiteCheck, Stop } from "../setting-out/site-check.js";
import type { Trouble } from "../setting-out/slack.js";
import type { SolvedWall } from "../../solver/index.js";
import { NONE, tableOfSome } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block } from "./paper.js";
import { openingWords, sideWords, titleOf, wallTitle } from "./words.js";

const TROUBLE: Readonly<Record<Trouble, string>> = {
  "under-half": "a cut goes under half",
  sliver: "a cut becomes a sliver",
  gone: "a cut is gone",
  "joint-closes": "the joint closes",
  "joint-opens": "the joint opens",
  "end-shows": "the covered end shows",
};

/** What to measure on the site before anything is cut, and where to stop. */
export function checkBlocks(ground: Ground, wall: SolvedWall): Block[] {
  const rows = siteChecks(ground.solved, wall).map((check) => [
    measureWords(ground, wall, check),
    ground.both(check.planned),
    stopWords(ground, check.least),
    stopWords(ground, check.most),
  ]);
  return tableOfSome(
    `${titleOf(wall.wall)}: stop and ask where less, or more, is measured`,
    ["Measure", ">The plan", "Stop under", "Stop over"],
    rows,
  );
}

function stopWords({ length }: Ground, stop: Stop | null): string {
  return stop ? `${length(stop.at)}: ${TROUBLE[stop.then]}` : NONE;
}

/** What is measured, from where to where. */
export function measureWords(ground: Ground, { wall }: SolvedWall, { measure }: SiteCheck): string {
  const { length } = ground;
  switch (measure.kind) {
    case "width":
      return `from end to end, ${length(measure.at)} up`;
    case "side": {
      const { side, at } = measure;
      const upright = side === "left" || side === "right";
      const where =
        at === null
          ? "at both ends and in the middle"
          : `${length(at)} ${upright ? "up" : "from the left"}`;
      const line = upright ? `${side} plumb line` : "working line";
      return `from the ${line} to the ${sideWords(wall.edges[side])}, ${where}`;
    }
    case "opening": {
      const { side, opening } = measure;
      const upright = side === "left" || side === "right";
      const line = upright ? `${side} plumb line` : "working line";
      return `from the ${line} to the rough opening of ${openingWords(opening)}, its ${side}`;
    }
    case "build":
      return `tile and bed of ${wallTitle(ground, measure.other)}, over the ${measure.side} end`;
    case "run":
      return `${measure.count} tiles and ${measure.count} joints laid dry, ${measure.direction === "across" ? "across" : "upright"}`;
  }
}

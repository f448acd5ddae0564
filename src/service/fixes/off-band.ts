import { exactLength, formatLength, type Nm } from "../../measure/index.js";
import { bandsOf, edgesInBand } from "../../rules/index.js";
import { statementFrom } from "../statement-from.js";
import type { Fix, Fixer } from "./fix.js";
import { isAtHead } from "./statement-at-head.js";

/** Moves a window or a niche whose sill or head cuts a band to the nearer edge of it. */
export const offBand: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "band/cut-through") return [];
  const wall = state.outcome.solved.walls.find((each) => each.wall.name === diagnostic.wall);
  const opening = wall?.wall.openings.find(({ origin }) => isAtHead(origin, diagnostic.range));
  const statement = opening && statementFrom(state, opening.origin);
  if (!wall || !opening || statement?.kind !== "opening") return [];
  if (opening.kind !== "window" && opening.kind !== "niche") return [];
  const at = statement.body.find((part) => part.kind === "at");
  if (!at?.y || at.yTo) return [];
  const { units } = state.outcome.plan;
  const range = state.tree.lines.range(at.y);
  return bandsOf(wall).flatMap((band) => {
    const taken = band.lay.region.takeaways.find((each) => each.opening === opening);
    return (taken ? edgesInBand(band, taken.box) : []).flatMap(({ edge, down, up }): Fix[] => {
      const by: Nm = down <= up ? -down : up;
      const end = by < 0 ? "bottom" : "top";
      const title = `Move ${opening.name} ${formatLength(Math.abs(by), units)} ${by < 0 ? "down" : "up"}: its ${edge} on the ${end} of band ${band.lay.lay.name}`;
      const edits = [{ range, text: exactLength(opening.at.y + by, units) }];
      return [{ title, mends: diagnostic, preferred: false, edits }];
    });
  });
};

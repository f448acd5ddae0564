import type { MeasuredTop } from "../model/index.js";
import { setName } from "../rules/index.js";
import type { SolvedLay } from "../solver/index.js";
import type { Figures } from "./figures.js";
import { plain } from "./markdown.js";

/** What of a lay is set, where its top was measured and is, and how wide that left its bed joints; nothing where none is set. */
export function setFigures(solved: SolvedLay, figures: Figures): string[] {
  const { lay, stand, joint } = solved;
  const { set } = lay;
  if (!set || !stand) return [];
  const many = set.from < set.to;
  const said = `${plain(setName(solved)!)} ${many ? "are" : "is"} set`;
  if (set.tops.length === 0) {
    return [`${said}, the top as planned, at ${figures.length(stand.top)}`];
  }
  const measured = set.tops.map((top) => measuredWords(top, figures)).join(", ");
  const found = `${said}, the top measured at ${measured}`;
  if (!stand.reached) return [`${found}: left out, it can't be there`];
  const off = stand.top - stand.planned;
  const place =
    off === 0 ? "where" : `${figures.length(Math.abs(off))} ${off < 0 ? "under" : "over"} where`;
  const beds = stand.bed === joint ? "" : `; bed joints ${figures.length(stand.bed)}`;
  return [
    found,
    `the rest begins over ${figures.length(stand.top)}, ${place} it was planned${beds}`,
  ];
}

function measuredWords({ at, y }: MeasuredTop, figures: Figures): string {
  const height = figures.length(y);
  return at === null ? height : `${height} (${figures.length(at)} from the left)`;
}

import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { type Chain, isStraight, pieceShape, type SolvedLay, valueAt } from "../../solver/index.js";

const AT: Readonly<Record<Side, number>> = { left: 0, bottom: 1, right: 2, top: 3 };

/**
 * How much of a piece's outline lies along a side of what its lay has, nm; 0 where it doesn't reach that side.
 * Along a slope the length is rounded once.
 */
export function lengthAlong({ region, pieces }: SolvedLay, i: number, side: Side): Nm {
  const chain = region[side];
  const slack = slackOf(chain);
  const reach = pieces.bounds[4 * i + AT[side]]!;
  if (chain.value.every((v) => v < reach - slack) || chain.value.every((v) => v > reach + slack)) {
    return 0;
  }
  const { outline } = pieceShape(pieces, i);
  const [along, off] = side === "left" || side === "right" ? [1, 0] : [0, 1];
  let length = 0;
  for (let k = 0; k < outline.length; k += 2) {
    const next = (k + 2) % outline.length;
    const [from, to] = [outline[k + along]!, outline[next + along]!];
    const [begin, end] = [outline[k + off]!, outline[next + off]!];
    if (from === to || !isOn(chain, from, begin) || !isOn(chain, to, end)) continue;
    length += Math.round(Math.hypot(to - from, end - begin));
  }
  return length;
}

function isOn(chain: Chain, at: Nm, value: Nm): boolean {
  return Math.abs(valueAt(chain, at) - value) <= slackOf(chain);
}

/** Corners on a slope are rounded to the nanometre, so they may lie one off it. */
function slackOf(chain: Chain): Nm {
  return isStraight(chain) ? 0 : 1;
}

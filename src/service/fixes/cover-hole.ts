import { exactLength, formatLength } from "../../measure/index.js";
import { plateSize } from "../../model/index.js";
import { leastLap } from "../../rules/index.js";
import { statementFrom } from "../statement-from.js";
import type { Fix, Fixer } from "./fix.js";
import { isAtHead } from "./statement-at-head.js";

/** Cuts a hole so small that its plate laps over it, or asks for a plate that does. */
export const coverHole: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "hole/plate-small") return [];
  const { plan, solved } = state.outcome;
  const wall = plan.walls.find(({ name }) => name === diagnostic.wall);
  const hole = wall?.holes.find(({ origin }) => isAtHead(origin, diagnostic.range));
  const statement = hole && statementFrom(state, hole.origin);
  if (!hole?.plate || statement?.kind !== "hole" || !statement.plate) return [];
  const lap = 2 * leastLap(solved);
  const size = plateSize(hole.plate);
  const fix = (title: string, edits: Fix["edits"]): Fix => ({
    title,
    mends: diagnostic,
    preferred: false,
    edits,
  });
  const write = (written: { start: number; end: number }, nm: number) => ({
    range: state.tree.lines.range(written),
    text: exactLength(nm, plan.units),
  });
  const smaller = Math.min(size.across, size.up) - lap;
  const larger = hole.across + lap;
  const { across, up } = statement.plate;
  const sides = [
    { written: across, nm: size.across },
    ...(up ? [{ written: up, nm: size.up }] : []),
  ].filter(({ nm }) => nm < larger);
  const shown = (nm: number): string => formatLength(nm, plan.units);
  return [
    ...(smaller > 0
      ? [fix(`Cut ${hole.name} ${shown(smaller)} across`, [write(statement.across, smaller)])]
      : []),
    fix(
      `Take a plate of ${shown(larger)} for ${hole.name}`,
      sides.map(({ written }) => write(written, larger)),
    ),
  ];
};

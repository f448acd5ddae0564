import type { Nm } from "../measure/index.js";

/** Evenly spaced things in a row: courses up a wall, tiles along a course. */
export interface Row {
  /** Where number 0 begins, and how far it is from one to the next. */
  readonly origin: Nm;
  readonly module: Nm;
  readonly face: Nm;
  /** The numbers of the first and the last that are there. */
  readonly first: number;
  readonly last: number;
  /** What is added to a number so that people count the first from 1. */
  readonly base: number;
}

/**
 * Which number after stands for a number before: add the answer. In rows of one module, the one that
 * stands nearest. Where the module changed, things drift: then the one under which the most have a
 * counterpart, and of those the one under which they moved least on the whole. Ties go to the one
 * that keeps people's numbers most, so that the way back gives the negative answer.
 */
export function matchRows(before: Row, after: Row): number {
  const wishes = before.module === after.module ? nearest(before, after) : fullest(before, after);
  const number = (by: number) => Math.abs(by + after.base - before.base);
  return wishes.reduce((best, wish) => {
    const [a, b] = [driftOf(before, after, wish), driftOf(before, after, best)];
    return a < b || (a === b && number(wish) < number(best)) ? wish : best;
  });
}

function nearest(before: Row, after: Row): readonly number[] {
  // Never minus zero.
  const near = Math.round((before.origin - after.origin) / after.module) + 0;
  return [near - 1, near, near + 1];
}

function fullest(before: Row, after: Row): readonly number[] {
  const [low, high] = [after.first - before.first, after.last - before.last].sort((a, b) => a - b);
  return Array.from({ length: high! - low! + 1 }, (_, i) => low! + i);
}

/** The mean distance, between middles, of those that have a counterpart. */
function driftOf(before: Row, after: Row, by: number): number {
  const middle = (row: Row, number: number) => 2 * (row.origin + number * row.module) + row.face;
  if (before.module === after.module && before.face === after.face) {
    return Math.abs(middle(after, by) - middle(before, 0));
  }
  const from = Math.max(before.first, after.first - by);
  const to = Math.min(before.last, after.last - by);
  let sum = 0;
  for (let i = from; i <= to; i++) sum += Math.abs(middle(after, i + by) - middle(before, i));
  return sum / Math.max(1, to - from + 1);
}

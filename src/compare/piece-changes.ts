import { pieceBounds, type SolvedLay } from "../solver/index.js";
import type {
  CutPiece,
  MovedPieces,
  PieceChanges,
  Range,
  RecutPieces,
  SeveralPieces,
  Shift,
} from "./comparison.js";
import { cutPiece } from "./cut-piece.js";
import { FATE, type PieceMatch } from "./match-pieces.js";

/** What became of the pieces of a wall, lay by lay. */
export function pieceChanges(matches: readonly PieceMatch[]): PieceChanges {
  const all = matches.map(layChanges);
  return {
    kept: all.reduce((sum, { kept }) => sum + kept, 0),
    moved: all.flatMap(({ moved }) => moved),
    recut: all.flatMap(({ recut }) => recut),
    fresh: all.flatMap(({ fresh }) => fresh),
    gone: all.flatMap(({ gone }) => gone),
  };
}

/** Those of one fate and one cut together. */
function layChanges(match: PieceMatch): PieceChanges {
  const { before, after } = match.lays;
  const { fates, twin } = match;
  return {
    kept: fates.before.reduce((sum, fate) => sum + (fate === FATE.kept ? 1 : 0), 0),
    moved: before && after ? movedGroups(before, after, twin, fates.before) : [],
    recut: before && after ? recutGroups(before, after, match) : [],
    fresh: after ? apartGroups(after, fates.after) : [],
    gone: before ? apartGroups(before, fates.before) : [],
  };
}

function movedGroups(
  before: SolvedLay,
  after: SolvedLay,
  twin: Int32Array,
  fates: Uint8Array,
): MovedPieces[] {
  const groups = new Map<string, { by: Shift; count: number }>();
  for (let i = 0; i < twin.length; i++) {
    if (fates[i] !== FATE.moved) continue;
    const [old, now] = [pieceBounds(before.pieces, i), pieceBounds(after.pieces, twin[i]!)];
    const by = { across: now.left - old.left, up: now.bottom - old.bottom };
    const key = `${by.across} ${by.up}`;
    const group = groups.get(key) ?? { by, count: 0 };
    group.count++;
    groups.set(key, group);
  }
  return [...groups.values()];
}

interface GrowingPair {
  count: number;
  before: CutPiece;
  after: CutPiece;
  readonly courses: { readonly before: Set<number>; readonly after: Set<number> };
}

function recutGroups(
  before: SolvedLay,
  after: SolvedLay,
  { twin, fates }: PieceMatch,
): RecutPieces[] {
  const groups = new Map<string, GrowingPair>();
  for (let i = 0; i < twin.length; i++) {
    if (fates.before[i] !== FATE.recut) continue;
    const old = cutPiece(before, i);
    const now = cutPiece(after, twin[i]!);
    const sloped = isSloped(old) || isSloped(now);
    const key = JSON.stringify([old, now].map((piece) => identity(piece, sloped)));
    const group = groups.get(key);
    const [from, to] = [
      before.below + before.pieces.course[i]!,
      after.below + after.pieces.course[twin[i]!]!,
    ];
    if (!group) {
      const courses = { before: new Set([from]), after: new Set([to]) };
      groups.set(key, { count: 1, before: old, after: now, courses });
      continue;
    }
    group.count++;
    group.before = together(group.before, old);
    group.after = together(group.after, now);
    group.courses.before.add(from);
    group.courses.after.add(to);
  }
  return [...groups.values()].map((group) => ({
    ...group,
    courses: { before: [...group.courses.before], after: [...group.courses.after] },
  }));
}

function apartGroups(lay: SolvedLay, fates: Uint8Array): SeveralPieces[] {
  const groups = new Map<string, { count: number; piece: CutPiece; courses: Set<number> }>();
  for (let i = 0; i < fates.length; i++) {
    if (fates[i] !== FATE.apart) continue;
    const piece = cutPiece(lay, i);
    const key = JSON.stringify(identity(piece, isSloped(piece)));
    const group = groups.get(key) ?? { count: 0, piece, courses: new Set() };
    group.count++;
    group.piece = together(group.piece, piece);
    group.courses.add(lay.below + lay.pieces.course[i]!);
    groups.set(key, group);
  }
  return [...groups.values()].map((group) => ({ ...group, courses: [...group.courses] }));
}

/** Pieces that are cut along a slope or round a hole differ from one to the next. */
function isSloped({ cut }: CutPiece): boolean {
  return cut === "scribe" || cut === "hole";
}

function identity({ cut, width, height, notch, place }: CutPiece, sloped: boolean): unknown {
  return sloped ? [cut, place] : [cut, width, height, notch, place];
}

function together(a: CutPiece, b: CutPiece): CutPiece {
  const range = (x: Range, y: Range) => ({
    least: Math.min(x.least, y.least),
    most: Math.max(x.most, y.most),
  });
  return { ...a, width: range(a.width, b.width), height: range(a.height, b.height) };
}

import { plateJson } from "../plate-json.js";
import { toMillimetres as mm } from "../../measure/index.js";
import type { Box } from "../../solver/index.js";
import type { Batch, CutTile, TrimCut, WallCuts } from "../../takeoff/index.js";

/** A wall's batches and the pieces behind their labels. Boxes are left, bottom, right, top in the tile. */
export function cutsJson({ batches, pieces }: WallCuts): object {
  return {
    batches: batches.map(batchJson),
    pieces: pieces.map(({ label, id, factory, set }) => ({
      ...{ label, piece: id, factory },
      ...(set ? { set } : {}),
    })),
  };
}

function batchJson({ tile, cut, keeps, labels, beyondSaw }: Batch): object {
  return {
    tile: tile.name,
    kind: cut.kind,
    box: boxJson(cut.box),
    fences: cut.fences.map(({ along, from, keep }) => ({ along, from, keep: mm(keep) })),
    tapers: cut.tapers.map(({ side, from, to, first, last }) => ({
      side,
      from: mm(from),
      to: mm(to),
      first: mm(first),
      last: mm(last),
    })),
    notches: cut.notches.map(({ opens, box }) => ({ opens, box: boxJson(box) })),
    holes: cut.holes.map(({ name, fromLeft, fromBottom, across, plate }) => ({
      name,
      fromLeft: mm(fromLeft),
      fromBottom: mm(fromBottom),
      across: mm(across),
      ...(plate ? { plate: plateJson(plate) } : {}),
    })),
    mitres: cut.mitres.map(({ side, length }) => ({ side, length: mm(length) })),
    keeps,
    labels,
    beyondSaw,
  };
}

/** What a tile is cut up into. */
export function cutTileJson({ pieces, offcuts }: CutTile): object {
  return {
    pieces: pieces.map(({ label, box, turns }) => ({ label, box: boxJson(box), turns })),
    offcuts: offcuts.map(boxJson),
  };
}

export function trimCutJson({ length, count, mitred, whole, where }: TrimCut): object {
  return { length: mm(length), count, mitred, whole, where };
}

function boxJson({ left, bottom, right, top }: Box): number[] {
  return [mm(left), mm(bottom), mm(right), mm(top)];
}

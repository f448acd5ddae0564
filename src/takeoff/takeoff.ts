import type { Nm } from "../measure/index.js";
import type { Side, Plate, Tile, Trim } from "../model/index.js";
import type { Box } from "../solver/index.js";

/** What a whole plan takes: how each piece is cut, which tile it comes from, and what to buy. */
export interface Takeoff {
  /** In the order of the plan; walls that were not laid have no pieces. */
  readonly walls: readonly WallCuts[];
  /** Every tile of the plan that is laid, in the order of the plan. */
  readonly tiles: readonly TileTakeoff[];
  /** Every trim of the plan that is set, in the order of the plan. */
  readonly trims: readonly TrimTakeoff[];
  readonly materials: Materials;
  readonly saw: SawWork;
}

/** The cuts of one wall, or of a surface inside an opening. */
export interface WallCuts {
  readonly wall: string;
  /** The wall's letter or letters in labels, such as `B`. */
  readonly mark: string;
  /** Every piece that is cut or mitred, course by course from the bottom, left to right. */
  readonly pieces: readonly CutPiece[];
  /** Those pieces that are not set yet by equal cuts, in the order of work: rips, crosscuts, corners, tapers, notches, holes, mitres. */
  readonly batches: readonly Batch[];
  /** The cuts of the surfaces inside its openings, opening by opening. */
  readonly insides: readonly WallCuts[];
}

/** A piece that is cut from a tile, or mitred, in the tile's own frame: its lower left corner is 0, 0. */
export interface CutPiece {
  /** Wall, course and place, such as `B-05-03`: what is written on the tile's back. */
  readonly label: string;
  /** The piece's id in the solved plan, such as `back/5/3`. */
  readonly id: string;
  /** Its index in the wall's PieceTable. */
  readonly index: number;
  readonly tile: Tile;
  readonly course: number;
  /** Whether it is on the wall already, so that it is in no batch. */
  readonly set: boolean;
  readonly cut: PieceCut;
  /** The edges that have to be the tile's own, since they show: at a field joint, or free without trim. */
  readonly factory: readonly Side[];
}

/** How a piece differs from its tile. Several may apply; a batch is of pieces that are the same in all. */
export interface PieceCut {
  readonly kind: "rip" | "crosscut" | "corner" | "taper" | "notch" | "hole" | "mitre";
  /** The smallest box round the piece, within the tile's face. */
  readonly box: Box;
  /** Straight through-cuts, as the fence is set: how much of the tile stays, measured from a factory edge. */
  readonly fences: readonly Fence[];
  /** Sloped sides with what is left at both their ends. */
  readonly tapers: readonly Taper[];
  /** Square bites out of the piece. */
  readonly notches: readonly Notch[];
  /** Round holes and bites. */
  readonly holes: readonly DrilledHole[];
  /** Edges that are cut back behind the face; they take nothing of it. */
  readonly mitres: readonly Mitre[];
}

/** A mitred edge, seen from the front as the piece is laid. */
export interface Mitre {
  readonly side: "left" | "right";
  /** Along the edge. */
  readonly length: Nm;
}

export interface Fence {
  /** `across`: a cut that leaves this width; `up`: one that leaves this height. */
  readonly along: "across" | "up";
  /** The edge that is held against the fence. */
  readonly from: Side;
  readonly keep: Nm;
}

/** A side cut along a slope: the size left at its two ends, left and right or bottom and top. */
export interface Taper {
  readonly side: Side;
  /** Where along the side the slope begins and ends, from the piece's left end or its bottom. */
  readonly from: Nm;
  readonly to: Nm;
  readonly first: Nm;
  readonly last: Nm;
}

/** A square bite: how far its corners lie from named edges of the piece. */
export interface Notch {
  /** The edges it opens on: two for an L, one for a U, none for an opening inside. */
  readonly opens: readonly Side[];
  /** Within the tile's face. */
  readonly box: Box;
}

/** A round hole by its centre from the tile's left and bottom edges (the centre may lie outside). */
export interface DrilledHole {
  readonly name: string;
  readonly fromLeft: Nm;
  readonly fromBottom: Nm;
  readonly across: Nm;
  /** What covers it; null where the plan states none. */
  readonly plate: Plate | null;
}

/** Pieces that are cut alike: the saw is set once for all of them. */
export interface Batch {
  readonly tile: Tile;
  readonly cut: PieceCut;
  /** The edges that stay as the factory made them. */
  readonly keeps: readonly Side[];
  /** Labels, in order. */
  readonly labels: readonly string[];
  /** What the saw can't do of it, in words; none when it can, or when the plan names no saw. */
  readonly beyondSaw: readonly string[];
}

/** One tile as it is cut up. Whole tiles are not listed. */
export interface CutTile {
  readonly pieces: readonly PlacedPiece[];
  /** What is left over, as rectangles that don't overlap; kerfs and the insides of notches are no offcuts. */
  readonly offcuts: readonly Box[];
}

/** Where in a tile a piece is cut from. */
export interface PlacedPiece {
  readonly label: string;
  /** Its bounds within the tile's face. */
  readonly box: Box;
  /** Quarter turns anticlockwise from how it is laid to how it lies in this tile. */
  readonly turns: 0 | 1 | 2 | 3;
}

/** What is bought of a tile of which so many are needed. */
export interface TilesBought {
  readonly needed: number;
  /** Spare tiles for breakage, as the plan allows for; 0 when it doesn't say. */
  readonly breakage: number;
  /** Spare tiles of the same lot to keep, as the plan asks; 0 when it doesn't say. */
  readonly spares: number;
  /** null when the plan doesn't say how many are in a box. */
  readonly boxes: { readonly count: number; readonly of: number; readonly over: number } | null;
  /** `needed`, breakage, spares, and what fills the last box. */
  readonly bought: number;
  readonly cost: Cost | null;
}

/** What is still to come of a tile of which some is on the wall already. */
export interface TilesToCome extends TilesBought {
  /** Tiles that are used: on the wall whole, or with at least one of the pieces that they are cut up into. */
  readonly used: number;
  /** Pieces to come that are cut from what is left of used tiles: as many tiles more at most, where that wasn't kept. */
  readonly fromUsed: number;
}

/** What a tile takes in the whole job, what is set of it included: how many, from which cuts, and why so many. */
export interface TileTakeoff extends TilesBought {
  readonly tile: Tile;
  readonly whole: number;
  /** Every tile that is cut, and into what. */
  readonly cut: readonly CutTile[];
  /** No way of cutting needs fewer tiles than this; equal to `cut.length` when the way is the best there is. */
  readonly cutBound: number;
  /** `whole` and cut tiles. */
  readonly needed: number;
  /** null where none of it is set. */
  readonly toCome: TilesToCome | null;
  /** What the needed tiles come to: together their faces, exactly. */
  readonly doubleArea: TileAreas;
}

/** Areas in nm², twice over so that they are whole. */
export interface TileAreas {
  /** Whole tiles and pieces, as they are set. */
  readonly set: bigint;
  readonly offcuts: bigint;
  /** What the saw takes between pieces and offcuts. */
  readonly kerf: bigint;
  /** What is cut out of pieces: notches, holes, and what tapers take. */
  readonly cutOut: bigint;
}

/** What a trim takes. */
export interface TrimTakeoff {
  readonly trim: Trim;
  readonly pieces: readonly TrimCut[];
  /** The runs' lengths in all, nm. */
  readonly length: Nm;
  /** Trim pieces to buy: the cut ones share a piece where two fit. */
  readonly bought: number;
  readonly cost: Cost | null;
}

/** Equal lengths of trim. */
export interface TrimCut {
  readonly length: Nm;
  readonly count: number;
  /** Mitred ends, seen from the front with the finished edge up; none for a square cut or a whole piece. */
  readonly mitred: readonly ("left" | "right")[];
  readonly whole: boolean;
  /** Where they go, one place a piece. */
  readonly where: readonly TrimPlace[];
}

export interface TrimPlace {
  readonly wall: string;
  /** Such as `sash bottom`, or `left end`. */
  readonly along: string;
}

export interface Cost {
  /** In hundredths of the plan's own money: nothing says which. */
  readonly hundredths: number;
}

/** Materials by exact volumes; what the plan gives no stock facts for is told in volumes alone. */
export interface Materials {
  readonly grout: readonly GroutTakeoff[];
  readonly sealant: readonly SealantTakeoff[];
  readonly mortar: readonly MortarTakeoff[];
  readonly membrane: readonly MembraneTakeoff[];
}

/** The bare wall to be waterproofed where tile is set, with the sides of its niches; twice the areas in nm². */
export interface MembraneTakeoff {
  readonly wall: string;
  readonly doubleArea: bigint;
  /** How much of that are the sides of niches, and of windows with tiled sides, whose depth the plan states. */
  readonly doubleNicheSides: bigint;
  /** It stands already, behind tile that is set. */
  readonly stands: boolean;
}

/** Volumes are cubic millimetres, rounded up to the whole one. */
export interface GroutTakeoff {
  readonly wall: string;
  readonly tile: string;
  readonly volume: number;
  /** Kilograms, from the stated density; null when the plan doesn't state one. */
  readonly mass: number | null;
}

export interface SealantTakeoff {
  readonly wall: string;
  /** Such as `left` or `sash`. */
  readonly along: string;
  readonly length: Nm;
  readonly width: Nm;
  readonly depth: Nm;
  readonly volume: number;
}

export interface MortarTakeoff {
  readonly wall: string;
  readonly doubleArea: bigint;
  /** The bed as embedded times the area. */
  readonly volume: number;
  /** Without what is under tile that is set; null where none is. */
  readonly toCome: { readonly doubleArea: bigint; readonly volume: number } | null;
  /** Bags, from the plan's own figure for a bag; null when it gives none. */
  readonly bags: { readonly exact: number; readonly bought: number } | null;
}

export interface SawWork {
  /** Straight passes of the saw in all, mitred edges of tile among them. */
  readonly passes: number;
  readonly holes: number;
  /** Mitred ends of trim. */
  readonly mitres: number;
  /** Mitred edges of tile, and how long they are together. */
  readonly mitredEdges: number;
  readonly mitreLength: Nm;
  /** Kerf reckoned with, nm, and whether the plan states it. */
  readonly kerf: Nm;
  readonly kerfStated: boolean;
}

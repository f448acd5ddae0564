import {
  Colors,
  DxfWriter,
  LineTypes,
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from "@tarikjabiri/dxf";
import { plainText, type WallScene } from "../../drawing/index.js";
import type { Plan } from "../../model/index.js";
import {
  boundsOf,
  cutOf,
  openingBox,
  pieceShape,
  type Ring,
  ringOf,
  type SolvedWall,
} from "../../solver/index.js";
import type { WallCuts } from "../../takeoff/index.js";

/** The layers of a drawing: what each holds, and its colour by number (ISO 128 leaves it to us). */
export const DXF_LAYERS = {
  WALL: Colors.White,
  "TILE-WHOLE": 8,
  "TILE-CUT": Colors.Green,
  TRIM: Colors.Magenta,
  OPENING: Colors.Blue,
  HOLE: Colors.Blue,
  "SOFT-JOINT": Colors.Cyan,
  "LEVEL-LINE": Colors.Red,
  LABEL: Colors.White,
} as const;

type Layer = keyof typeof DXF_LAYERS;

const LEVEL_LINE_TYPE = "LEVEL";
/** Letters of a label in the tile's face, as a share of its smaller side. */
const LABEL_SHARE = 0.18;

/**
 * A wall as a drawing in the DXF format (AutoCAD 2007's, whose texts are UTF-8), in true size: x runs
 * right from the left substrate, y up from the level line, in inches or in millimetres as the plan is,
 * and the file says which.
 */
export function dxfOf(
  plan: Plan,
  solved: SolvedWall,
  scene: WallScene,
  cuts: WallCuts | null,
): string {
  return new WallDrawing(plan, solved, scene, cuts).draw();
}

const NM_PER = { inch: 25_400_000, mm: 1_000_000 } as const;

class WallDrawing {
  readonly #dxf = new DxfWriter();
  readonly #perUnit: number;

  constructor(
    plan: Plan,
    private readonly solved: SolvedWall,
    private readonly scene: WallScene,
    private readonly cuts: WallCuts | null,
  ) {
    const inches = plan.units === "inch" || plan.units === "foot";
    this.#perUnit = inches ? NM_PER.inch : NM_PER.mm;
    this.#dxf.setUnits(inches ? Units.Inches : Units.Millimeters);
    this.#dxf.setVariable("$MEASUREMENT", { 70: inches ? 0 : 1 });
    const dash = (inches ? 1 : 25) * 3;
    this.#dxf.addLType(LEVEL_LINE_TYPE, "____ _ ____ _", [dash, -dash / 4, dash / 4, -dash / 4]);
    for (const [name, color] of Object.entries(DXF_LAYERS)) {
      const line = name === "LEVEL-LINE" ? LEVEL_LINE_TYPE : LineTypes.Continuous;
      this.#dxf.addLayer(name, color, line);
    }
  }

  draw(): string {
    const { wall } = this.solved;
    this.#ring("WALL", nmRing(this.scene.bare));
    for (const { kind, rings } of this.scene.bands) {
      if (kind !== "soft" && kind !== "bead") continue;
      for (const ring of rings) this.#ring("SOFT-JOINT", nmRing(ring));
    }
    this.#drawPieces();
    for (const run of this.solved.trims) {
      for (const { shape } of run.pieces) this.#ring("TRIM", shape.outline);
    }
    for (const opening of wall.openings) {
      const box = openingBox(opening);
      this.#ring("OPENING", ringOf(box));
      this.#text(plainText(opening.name), (box.left + box.right) / 2, (box.bottom + box.top) / 2);
    }
    for (const { at, across } of wall.holes) {
      const { x, y } = this.#point(at.x, at.y);
      this.#dxf.addCircle(point3d(x, y), across / 2 / this.#perUnit, { layerName: "HOLE" });
    }
    const [from, to] = [this.#point(0, 0), this.#point(wall.size.across, 0)];
    this.#dxf.addLine(point3d(from.x, from.y), point3d(to.x, to.y), { layerName: "LEVEL-LINE" });
    this.#text(this.scene.title, wall.size.across / 2, wall.size.up + 2 * this.#letters);
    return this.#dxf.stringify();
  }

  /** Cut pieces carry their labels where the takeoff gives them. */
  #drawPieces(): void {
    const labels = new Map(this.cuts?.pieces.map(({ index, label }) => [index, label]));
    for (const { pieces } of this.solved.lays) {
      for (let i = 0; i < pieces.count; i++) {
        const shape = pieceShape(pieces, i);
        const layer = cutOf(pieces, i) === "none" ? "TILE-WHOLE" : "TILE-CUT";
        this.#ring(layer, shape.outline);
        for (const hole of shape.holes) this.#ring(layer, hole);
        const label = labels.get(i);
        if (label === undefined) continue;
        const box = boundsOf(shape.outline);
        this.#text(label, (box.left + box.right) / 2, (box.bottom + box.top) / 2);
      }
    }
  }

  get #letters(): number {
    const face = this.solved.lays[0]?.lattice.face;
    return face ? LABEL_SHARE * Math.min(face.across, face.up) : this.solved.wall.size.up / 40;
  }

  #ring(layer: Layer, ring: Ring): void {
    const corners = [];
    for (let i = 0; i < ring.length; i += 2) {
      const { x, y } = this.#point(ring[i]!, ring[i + 1]!);
      corners.push({ point: point2d(x, y) });
    }
    this.#dxf.addLWPolyline(corners, { flags: LWPolylineFlags.Closed, layerName: layer });
  }

  /** A text in the middle of a place. */
  #text(words: string, x: number, y: number): void {
    const at = this.#point(x, y);
    const place = point3d(at.x, at.y, 0);
    this.#dxf.addText(place, this.#letters / this.#perUnit, plainSigns(words), {
      layerName: "LABEL",
      horizontalAlignment: TextHorizontalAlignment.Center,
      verticalAlignment: TextVerticalAlignment.Middle,
      secondAlignmentPoint: place,
    });
  }

  #point(x: number, y: number): { readonly x: number; readonly y: number } {
    return { x: x / this.#perUnit, y: y / this.#perUnit };
  }
}

/** Millimetres of a picture, whose y runs down, as nanometres of a wall. */
function nmRing(points: readonly number[]): number[] {
  return points.map((value, i) => Math.round((i % 2 === 0 ? value : -value) * 1e6));
}

/** `%%` and `^` begin signs in a DXF text. */
function plainSigns(words: string): string {
  return words.replace(/%%/g, "%%%%%%").replace(/\^/g, "^ ");
}

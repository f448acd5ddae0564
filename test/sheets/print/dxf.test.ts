import assert from "node:assert/strict";
import DxfParser, { type IEntity, type ILwpolylineEntity, type ITextEntity } from "dxf-parser";
import { buildWallScene } from "../../../src/drawing/index.js";
import { dxfOf, DXF_LAYERS } from "../../../src/sheets/print/dxf.js";
import { cutOf, doubleArea, doublePieceArea } from "../../../src/solver/index.js";
import { takeoff } from "../../../src/takeoff/index.js";
import { exampleOutcome } from "./kit.js";

/** A wall's drawing, as another program reads it. */
function drawn(name: string, wall = 0) {
  const { solved } = exampleOutcome(name);
  const each = solved.walls[wall]!;
  const cuts = takeoff(solved).walls[wall]!;
  const text = dxfOf(solved.plan, each, buildWallScene(solved, each, []).walls[0]!, cuts);
  const file = new DxfParser().parseSync(text)!;
  const on = (layer: string): IEntity[] => file.entities.filter((entity) => entity.layer === layer);
  return { solved: each, cuts, text, file, on };
}

/** The ring of a polyline in nanometres. */
function ringOf(entity: IEntity, perUnit: number): number[] {
  return (entity as ILwpolylineEntity).vertices.flatMap(({ x, y }) =>
    [x, y].map((v) => Math.round(v * perUnit)),
  );
}

for (const [name, wall, unit, perUnit] of [
  ["three-walls.tileplan", 1, 1, 25_400_000],
  ["niche-wall.tileplan", 0, 4, 1_000_000],
  ["back-wall.tileplan", 0, 1, 25_400_000],
] as const) {
  describe(`the drawing of ${name}, wall ${wall + 1}`, () => {
    const { solved, cuts, file, on, text } = drawn(name, wall);
    const { pieces } = solved.lays[0]!;

    it("says its unit", () => {
      assert.equal(file.header.$INSUNITS, unit);
    });

    it("has the pieces' areas, exact, whole and cut ones on layers of their own", () => {
      for (const layer of ["TILE-WHOLE", "TILE-CUT"] as const) {
        let wanted = 0n;
        for (let i = 0; i < pieces.count; i++) {
          if ((cutOf(pieces, i) === "none") === (layer === "TILE-WHOLE"))
            wanted += doublePieceArea(pieces, i);
        }
        // Outlines run anticlockwise, holes clockwise: their areas add up.
        const found = on(layer).reduce(
          (sum, entity) => sum + doubleArea(ringOf(entity, perUnit)),
          0n,
        );
        assert.equal(found, wanted, layer);
      }
    });

    it("closes every outline", () => {
      for (const entity of file.entities) {
        if (entity.type === "LWPOLYLINE") assert.ok((entity as ILwpolylineEntity).shape);
      }
    });

    it("has trim, openings and holes where the plan has them, and a level line", () => {
      const trims = solved.trims.reduce((sum, run) => sum + run.pieces.length, 0);
      assert.equal(on("TRIM").length, trims);
      assert.equal(on("OPENING").length, solved.wall.openings.length);
      assert.equal(on("HOLE").length, solved.wall.holes.length);
      assert.equal(on("LEVEL-LINE").length, 1);
      assert.equal(on("WALL").length, 1);
      assert.ok(on("SOFT-JOINT").length > 0);
    });

    it("labels each cut piece, text as text", () => {
      const texts = on("LABEL").map((entity) => (entity as ITextEntity).text);
      for (const { label } of cuts.pieces) assert.ok(texts.includes(label), label);
      assert.ok(on("LABEL").every(({ type }) => type === "TEXT"));
    });

    it("uses its named layers alone", () => {
      const used = new Set(file.entities.map(({ layer }) => layer));
      for (const layer of used) assert.ok(Object.hasOwn(DXF_LAYERS, layer), layer);
      for (const layer of Object.keys(DXF_LAYERS))
        assert.ok(file.tables.layer.layers[layer], layer);
    });

    it("is the same each time", () => {
      assert.equal(drawn(name, wall).text, text);
    });
  });
}

describe("the texts of a drawing", () => {
  it("print signs that would begin a code as themselves", () => {
    const { solved } = exampleOutcome("back-wall.tileplan");
    const [wall] = solved.walls;
    const scene = { ...buildWallScene(solved, wall!, []).walls[0]!, title: "100 %%d ^M é" };
    const text = dxfOf(solved.plan, wall!, scene, null);
    assert.ok(text.includes("\n100 %%%%%%d ^ M é\n"));
  });
});

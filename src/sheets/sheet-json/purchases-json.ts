import { toMillimetres as mm } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
import type { Takeoff, TileAreas, TileTakeoff, TrimTakeoff } from "../../takeoff/index.js";
import { squareMillimetres } from "../area.js";
import { type MaterialsToBuy, materialsToBuy } from "../purchases/materials-to-buy.js";
import { cutTileJson, trimCutJson } from "./cuts-json.js";

/** A tile's count, from what is set to what is bought, as JSON text: areas keep all their decimals. */
export function tileJson(taken: TileTakeoff): string {
  const { tile, whole, cut, cutBound, needed, breakage, spares, boxes, bought, cost } = taken;
  const { toCome } = taken;
  const counts = JSON.stringify({
    tile: tile.name,
    title: tile.title,
    lot: tile.lot,
    whole,
    cutUp: cut.length,
    cutBound,
    needed,
    breakage,
    spares,
    boxes,
    bought,
    cost: cost?.hundredths ?? null,
    ...(toCome ? { toCome: { ...toCome, cost: toCome.cost?.hundredths ?? null } } : {}),
    cut: cut.map(cutTileJson),
  });
  return `${counts.slice(0, -1)},"areas":${areasText(taken.doubleArea)}}`;
}

function areasText({ set, offcuts, kerf, cutOut }: TileAreas): string {
  const parts = { set, offcuts, kerf, cutOut };
  const texts = Object.entries(parts).map(([key, area]) => `"${key}":${squareMillimetres(area)}`);
  return `{${texts.join(",")}}`;
}

export function trimJson({ trim, pieces, length, bought, cost }: TrimTakeoff): string {
  return JSON.stringify({
    trim: trim.name,
    title: trim.title,
    lot: trim.lot,
    length: mm(length),
    bought,
    cost: cost?.hundredths ?? null,
    pieces: pieces.map(trimCutJson),
  });
}

/** Volumes are mm³, masses mg, costs hundredths of the plan's own money. */
export function materialsJson(plan: Plan, { materials }: Takeoff): string {
  const { mortar, grout, sealant, membrane } = materialsToBuy(plan, materials);
  const bedText = ({ doubleArea, volume, bags }: Omit<typeof mortar, "toCome">): string =>
    `"area":${squareMillimetres(doubleArea)},"volume":${volume},"bags":${sold(bags.count, bags.cost)}`;
  const sold = (count: number | null, cost: number | null) => JSON.stringify({ count, cost });
  return (
    `{"mortar":{${bedText(mortar)}${mortar.toCome ? `,"toCome":{${bedText(mortar.toCome)}}` : ""}},\n` +
    `"grout":{"volume":${grout.volume},"mass":${grout.mass},` +
    `"bags":${sold(grout.bags.count, grout.bags.cost)}},\n` +
    `"sealant":{"length":${mm(sealant.length)},"volume":${sealant.volume},` +
    `"tubes":${sold(sealant.tubes.count, sealant.tubes.cost)}},\n` +
    `"membrane":{${membraneText(membrane)}${membrane.toCome ? `,"toCome":{${membraneText(membrane.toCome)}}` : ""}}}`
  );
}

function membraneText(membrane: Omit<MaterialsToBuy["membrane"], "toCome">): string {
  const { doubleArea, doubleNicheSides } = membrane;
  return `"area":${squareMillimetres(doubleArea)},"nicheSides":${squareMillimetres(doubleNicheSides)}`;
}

import { lineHeight, makeLabel } from "../labels.js";
import type { Badge, Label, LabelRole, Place, Swatch } from "../scene.js";
import { wrapText } from "../text-metrics.js";

/** A block of text with its samples and badges, from its own upper left corner. */
export interface Block {
  readonly labels: readonly Label[];
  readonly swatches: readonly Swatch[];
  readonly badges: readonly Badge[];
  readonly width: number;
  readonly height: number;
}

/** The shape of a block: as many columns as `columns`, each `width` wide. */
export interface BlockForm {
  readonly em: number;
  readonly width: number;
  readonly columns: number;
}

export interface ListItem {
  readonly words: string;
  readonly indent: number;
  readonly role: LabelRole;
  readonly swatches: readonly Swatch[];
  readonly badges: readonly Badge[];
}

const SIZE = 0.9;
const COLUMN_GAP = 2.4;
const FIRST_LINE = 2.35;
const ITEM_GAP = 0.35;

/** A heading and its items, each wrapped; `itemAt` is given the middle of the item's first line. */
export function listBlock<T>(
  heading: string,
  items: readonly T[],
  form: BlockForm,
  itemAt: (item: T, place: Place) => ListItem,
): Block {
  const { em, width } = form;
  const size = SIZE * em;
  const step = lineHeight(size) * 1.02;
  const linesOf = (item: ListItem) => wrapText(item.words, width - item.indent, size);
  const heights = items.map((item) => {
    return linesOf(itemAt(item, { x: 0, y: 0 })).length * step + ITEM_GAP * em;
  });
  const places = inColumns(heights, form);
  const laid = items.map((item, i) => itemAt(item, places[i]!));
  const labels = laid.flatMap((item, i) =>
    linesOf(item).map((text, line) => {
      const { x, y } = places[i]!;
      const at = { x: x + item.indent, y: y + line * step };
      return makeLabel({ text, role: item.role, ...at, size, anchor: "start" });
    }),
  );
  const title = makeLabel({
    text: heading,
    role: "heading",
    x: 0,
    y: 0.7 * em,
    size: em,
    anchor: "start",
    bold: true,
  });
  const used = new Set(places.map((place) => place.x)).size;
  return {
    labels: [title, ...labels],
    swatches: laid.flatMap((item) => item.swatches),
    badges: laid.flatMap((item) => item.badges),
    width: used * width + (used - 1) * COLUMN_GAP * em,
    height: Math.max(0, ...places.map((place, i) => place.y + heights[i]!)),
  };
}

/** Items of these heights, from the top of each column; columns end as level as they can. */
function inColumns(heights: readonly number[], { em, width, columns }: BlockForm): Place[] {
  const most = heights.reduce((sum, height) => sum + height, 0) / columns;
  let x = 0;
  let y = 0;
  return heights.map((height) => {
    if (y > 0 && y + height / 2 > most) {
      x += width + COLUMN_GAP * em;
      y = 0;
    }
    const place = { x, y: y + FIRST_LINE * em };
    y += height;
    return place;
  });
}

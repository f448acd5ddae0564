/// <reference lib="dom" />
import { SVG } from "@svgdotjs/svg.js";
import { draw, type Scene } from "../../drawing/index.js";
import type { Block, Pole, Table } from "../../sheets/index.js";
import { adoptStyles } from "../adopt-styles.js";
import { make, makeSvg } from "../elements.js";

/** A block of a page as an element: texts become text nodes, never markup. */
export function blockElement(block: Block): HTMLElement {
  switch (block.kind) {
    case "heading":
      return make("h3", {}, block.text);
    case "text":
      return make("p", {}, block.text);
    case "caution":
      return make(
        "div",
        { class: "caution", role: "note", "aria-label": "Caution" },
        ...block.lines.map((line) => make("p", {}, line)),
      );
    case "list":
      return make(
        block.numbered ? "ol" : "ul",
        {},
        ...block.items.map((item) => make("li", {}, item)),
      );
    case "table":
      return tableElement(block);
    case "picture":
      return make("figure", {}, pictureElement(block.scene), make("figcaption", {}, block.caption));
    case "pole":
      return poleElement(block);
  }
}

function tableElement({ caption, columns, rows }: Table): HTMLElement {
  const head = columns.map(({ title, align }) => make("th", { scope: "col", class: align }, title));
  const body = rows.map((cells) =>
    make("tr", {}, ...cells.map((cell, i) => make("td", { class: columns[i]!.align }, cell))),
  );
  return make(
    "table",
    {},
    make("caption", {}, caption),
    make("thead", {}, make("tr", {}, ...head)),
    make("tbody", {}, ...body),
  );
}

function pictureElement(scene: Scene): SVGSVGElement {
  const element = makeSvg("svg");
  draw(scene, SVG(element));
  adoptStyles(element);
  return element;
}

/** On a screen nothing is in true size: a pole is told as its marks, and printed from the PDF. */
function poleElement({ caption, marks }: Pole): HTMLElement {
  return tableElement({
    kind: "table",
    caption: `${caption} (the PDF has it in true size)`,
    columns: [
      { title: "At", align: "right" },
      { title: "Mark", align: "left" },
    ],
    rows: [...marks].reverse().map(({ reading, what }) => [reading, what]),
  });
}

/// <reference lib="dom" />
import { draw, type PictureBox, type Place, type Points, type Scene } from "../drawing/index.js";
import { make, makeSvg } from "./elements.js";
import { ChangeMarks } from "./change-marks.js";
import { redraw } from "./redraw.js";
import { seenBox, type Size, type View } from "./view.js";

/** What is marked over the drawing. */
export type MarkName = "cursor" | "finding" | "hover" | "piece";

/** Rings to mark, and where their wall stands in the picture. */
export interface MarkedRings {
  readonly at: Place;
  readonly rings: readonly Points[];
}

const MARKS: readonly MarkName[] = ["cursor", "finding", "hover", "piece"];

/** Where the picture is drawn, under a sheet for marks that is seen through the same view. */
export class Stage {
  /** Takes the pointer and the keys. */
  readonly element = make("div", { class: "stage", tabindex: "0" });
  readonly #marks = new Map<MarkName, SVGPathElement>();
  /** On the pieces that changed. */
  readonly changes = new ChangeMarks();
  readonly #sheet = makeSvg("svg", { class: "marks", "aria-hidden": "true" });
  #drawn: SVGSVGElement | null = null;

  constructor() {
    this.#sheet.append(this.changes.element);
    for (const name of MARKS) {
      const path = makeSvg("path", { class: `mark-${name}` });
      this.#marks.set(name, path);
      this.#sheet.append(path);
    }
    this.element.append(this.#sheet);
  }

  /** The drawn picture, to be exported. */
  get drawn(): SVGSVGElement | null {
    return this.#drawn;
  }

  get room(): Size {
    return { width: this.element.clientWidth, height: this.element.clientHeight };
  }

  /** Draws a scene in the place of the one before: apart from the page, then what changed is put into it. */
  show(scene: Scene): void {
    const drawn = redraw(this.#drawn, (svg) => draw(scene, svg));
    if (!this.#drawn) this.#sheet.before(drawn);
    this.#drawn = drawn;
    this.changes.place(scene);
  }

  clear(): void {
    this.#drawn?.remove();
    this.#drawn = null;
    this.changes.show(null);
    for (const name of MARKS) this.mark(name, null);
  }

  look(view: View): void {
    const box = viewBoxOf(seenBox(view, this.room));
    this.#drawn?.setAttribute("viewBox", box);
    this.#sheet.setAttribute("viewBox", box);
  }

  mark(name: MarkName, marked: MarkedRings | null): void {
    const path = this.#marks.get(name)!;
    if (!marked) {
      path.removeAttribute("d");
      return;
    }
    path.setAttribute("transform", `translate(${marked.at.x} ${marked.at.y})`);
    path.setAttribute("d", marked.rings.map(ringPath).join(""));
  }

  /** A place of the window, from the room's upper left corner. */
  placeInRoom({ x, y }: Place): Place {
    const { left, top } = this.element.getBoundingClientRect();
    return { x: x - left - this.element.clientLeft, y: y - top - this.element.clientTop };
  }
}

export function viewBoxOf({ left, top, right, bottom }: PictureBox): string {
  return `${left} ${top} ${right - left} ${bottom - top}`;
}

function ringPath(ring: Points): string {
  return `M${ring.join(" ")}Z`;
}

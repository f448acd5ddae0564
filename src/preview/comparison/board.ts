/// <reference lib="dom" />
import { draw, drawOverlay, type PictureBox, type Place, type Scene } from "../../drawing/index.js";
import type { ComparisonPicture } from "../../service/index.js";
import { roomOf } from "../box-to-fit.js";
import { make } from "../elements.js";
import { redraw } from "../redraw.js";
import { viewBoxOf } from "../stage.js";
import { seenBox, type Size, type View } from "../view.js";

/** A drawing, and where its wall stands in it: both states of a wall are told from there. */
interface Layer {
  readonly element: HTMLElement;
  drawn: SVGSVGElement | null;
  at: Place;
}

/** Room over both states for what the handle says, as a share of their height. */
const HEADROOM = 0.07;

const ORIGIN: Place = { x: 0, y: 0 };

/** Where a comparison is drawn: one picture, or two that lie on one another and are cut at the handle. */
export class Board {
  readonly element = make("div", { class: "stage board", tabindex: "0" });
  readonly #after = newLayer("after");
  readonly #before = newLayer("before");
  #box: PictureBox | null = null;

  constructor() {
    this.element.append(this.#after.element, this.#before.element);
    this.handle = 0.5;
  }

  /** What "fit" shows whole; null while nothing is drawn. */
  get box(): PictureBox | null {
    return this.#box;
  }

  get room(): Size {
    return { width: this.element.clientWidth, height: this.element.clientHeight };
  }

  /** Draws a picture in the place of the one before, or nothing. */
  show(picture: ComparisonPicture | null): void {
    this.element.dataset.way = picture?.way ?? "none";
    switch (picture?.way) {
      case "sides":
        show(this.#after, ORIGIN, (svg) => draw(picture.scene, svg));
        clear(this.#before);
        this.#box = picture.scene.view;
        return;
      case "overlay":
        show(this.#after, ORIGIN, (svg) => drawOverlay(picture.scene, svg));
        clear(this.#before);
        this.#box = picture.scene.view;
        return;
      case "slider":
        showWall(this.#before, picture.before);
        showWall(this.#after, picture.after);
        this.#box = boxOfBoth(picture.before, picture.after);
        return;
      case undefined:
        clear(this.#before);
        clear(this.#after);
        this.#box = null;
    }
  }

  look(view: View): void {
    for (const { drawn, at } of [this.#before, this.#after]) {
      const { left, top, right, bottom } = seenBox(view, this.room);
      const seen = {
        left: left + at.x,
        right: right + at.x,
        top: top + at.y,
        bottom: bottom + at.y,
      };
      drawn?.setAttribute("viewBox", viewBoxOf(seen));
    }
  }

  /** Where both states are cut, from the left, as a share of the room. */
  set handle(share: number) {
    this.element.style.setProperty("--handle", `${100 * share}%`);
  }

  /** A place of the window, from the room's upper left corner. */
  placeInRoom({ x, y }: Place): Place {
    const { left, top } = this.element.getBoundingClientRect();
    return { x: x - left - this.element.clientLeft, y: y - top - this.element.clientTop };
  }
}

function newLayer(name: "before" | "after"): Layer {
  return { element: make("div", { class: `layer ${name}` }), drawn: null, at: ORIGIN };
}

function showWall(layer: Layer, scene: Scene | null): void {
  if (scene) show(layer, scene.walls[0]!.at, (svg) => draw(scene, svg));
  else clear(layer);
}

function show(layer: Layer, at: Place, drawInto: Parameters<typeof redraw>[1]): void {
  layer.at = at;
  const drawn = redraw(layer.drawn, drawInto);
  // Two drawings in one page share names; the board says in words what they show.
  for (const name of ["role", "aria-labelledby"]) drawn.removeAttribute(name);
  drawn.setAttribute("aria-hidden", "true");
  if (!layer.drawn) layer.element.append(drawn);
  layer.drawn = drawn;
}

function clear(layer: Layer): void {
  layer.drawn?.remove();
  layer.drawn = null;
}

/** Both states of a wall, told from the wall itself; one is there. */
function boxOfBoth(before: Scene | null, after: Scene | null): PictureBox {
  const boxes = [before, after].flatMap((scene) => {
    if (!scene) return [];
    const wall = scene.walls[0]!;
    const { left, top, right, bottom } = roomOf(wall, []);
    const { x, y } = wall.at;
    return [{ left: left - x, top: top - y, right: right - x, bottom: bottom - y }];
  });
  const top = Math.min(...boxes.map((box) => box.top));
  const bottom = Math.max(...boxes.map((box) => box.bottom));
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: top - HEADROOM * (bottom - top),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom,
  };
}

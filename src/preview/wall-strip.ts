/// <reference lib="dom" />
import type { Scene } from "../drawing/index.js";
import type { PictureWall } from "../service/index.js";
import { make } from "./elements.js";
import { roveFocus, setStop } from "./roving.js";
import { smallPicture } from "./small-picture.js";

const SEVERITIES = ["error", "warning", "information"] as const;

/** A row of walls: small pictures with their counts of findings, and one button for all of them. */
export class WallStrip {
  readonly element = make("div", { class: "walls", role: "toolbar", "aria-label": "Walls" });
  #shown = "";

  constructor(private readonly choose: (wall: string | null) => void) {
    roveFocus(this.element);
  }

  /** `chosen` is null for all walls together. */
  show(scene: Scene, walls: readonly PictureWall[], chosen: string | null): void {
    // A plan of one wall is the wall.
    this.element.hidden = walls.length < 2;
    const content = JSON.stringify([scene.walls, walls]);
    if (content !== this.#shown) {
      this.#shown = content;
      this.#build(scene, walls);
    }
    this.choice = chosen;
  }

  set choice(chosen: string | null) {
    const buttons = Array.from(this.element.querySelectorAll("button"));
    const at = buttons.findIndex((button) => (button.dataset.wall ?? null) === chosen);
    buttons.forEach((button, i) => {
      if (i === at) button.setAttribute("aria-current", "true");
      else button.removeAttribute("aria-current");
    });
    const focused = buttons.findIndex((button) => button === document.activeElement);
    setStop(this.element, focused >= 0 ? focused : at);
  }

  #build(scene: Scene, walls: readonly PictureWall[]): void {
    const focused = (document.activeElement as HTMLElement | null)?.dataset.wall;
    const all = make("button", { type: "button", class: "all" }, "All walls");
    all.addEventListener("click", () => this.choose(null));
    this.element.replaceChildren(all, ...walls.map((wall) => this.#button(scene, wall)));
    if (focused === undefined) return;
    const again = Array.from(this.element.querySelectorAll("button"));
    again.find((button) => button.dataset.wall === focused)?.focus();
  }

  #button(scene: Scene, { name, title, counts }: PictureWall): HTMLButtonElement {
    const drawn = scene.walls.find((wall) => wall.name === name);
    const told = SEVERITIES.filter((severity) => counts[severity] > 0);
    const words = told.map((severity) => countWords(severity, counts[severity]));
    const button = make(
      "button",
      { type: "button", "data-wall": name },
      ...(drawn ? [smallPicture(drawn)] : []),
      make("span", { class: "wall-title" }, title),
      make("span", { class: "unseen" }, `: ${words.length > 0 ? words.join(", ") : "no findings"}`),
      make(
        "span",
        { class: "counts", "aria-hidden": "true" },
        ...told.map((severity) =>
          make("span", { class: `count ${severity}` }, String(counts[severity])),
        ),
      ),
    );
    button.addEventListener("click", () => this.choose(name));
    return button;
  }
}

const NOUNS = { error: "error", warning: "warning", information: "note" } as const;

export function countWords(severity: keyof typeof NOUNS, count: number): string {
  return `${count} ${NOUNS[severity]}${count === 1 ? "" : "s"}`;
}

/// <reference lib="dom" />
import type { ChangedWall } from "../../service/index.js";
import { make } from "../elements.js";
import { roveFocus, setStop } from "../roving.js";

/** The walls that changed, each with what changed on it; the one in the picture is current. */
export class WallChoice {
  readonly element = make("div", {
    class: "walls",
    role: "toolbar",
    "aria-label": "Walls that changed",
  });

  constructor(private readonly choose: (wall: string) => void) {
    roveFocus(this.element);
  }

  show(walls: readonly ChangedWall[], chosen: string | null): void {
    this.element.hidden = walls.length === 0;
    const focused = (document.activeElement as HTMLElement | null)?.dataset.wall;
    const buttons = walls.map((wall) => this.#button(wall, wall.name === chosen));
    this.element.replaceChildren(...buttons);
    setStop(
      this.element,
      walls.findIndex(({ name }) => name === (focused ?? chosen)),
    );
    buttons.find((button) => button.dataset.wall === focused)?.focus();
  }

  #button({ name, title, headline }: ChangedWall, isCurrent: boolean): HTMLButtonElement {
    const button = make(
      "button",
      { type: "button", "data-wall": name, ...(isCurrent && { "aria-current": "true" }) },
      make("span", { class: "wall-title" }, title),
      make("span", { class: "wall-headline", title: headline }, headline),
    );
    button.addEventListener("click", () => this.choose(name));
    return button;
  }
}

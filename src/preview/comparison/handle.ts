/// <reference lib="dom" />
import { make } from "../elements.js";

/** How far a key moves the handle, and with Page Up or Page Down, as shares of the room. */
const STEP = 0.02;
const LEAP = 0.1;

/** Half of the grip and a little, in pixels. */
const GRIP = 14;

/**
 * The handle between before and after (the slider pattern of the ARIA Authoring Practices Guide): by
 * mouse, pen or finger, or by the arrows, Page Up and Page Down, Home and End.
 */
export class Handle {
  readonly element: HTMLElement;
  #at = 0.5;

  constructor(
    private readonly room: HTMLElement,
    private readonly moved: (share: number) => void,
  ) {
    const tag = (words: string): HTMLElement => make("span", { "aria-hidden": "true" }, words);
    this.element = make(
      "div",
      {
        class: "handle",
        role: "slider",
        tabindex: "0",
        "aria-label": "Before and after",
        "aria-valuemin": "0",
        "aria-valuemax": "100",
      },
      tag("before"),
      make("i", { "aria-hidden": "true" }),
      tag("after"),
    );
    this.#watchPointer();
    this.element.addEventListener("keydown", (event) => this.#key(event));
    this.at = 0.5;
  }

  /** From the left, as a share of the room. */
  get at(): number {
    return this.#at;
  }

  set at(share: number) {
    this.#at = Math.min(1, Math.max(0, share));
    const percent = Math.round(100 * this.#at);
    // The grip stays in the room: at its very edge the editor's own border would take the pointer.
    this.element.style.left = `clamp(${GRIP}px, ${100 * this.#at}%, calc(100% - ${GRIP}px))`;
    this.element.setAttribute("aria-valuenow", String(percent));
    this.element.setAttribute("aria-valuetext", `before up to ${percent} %, after beyond`);
  }

  #move(share: number): void {
    this.at = share;
    this.moved(this.#at);
  }

  #watchPointer(): void {
    const { element } = this;
    element.addEventListener("pointerdown", (event) => {
      if (event.button !== 0) return;
      // The picture under it would take the pointer.
      event.stopPropagation();
      element.setPointerCapture(event.pointerId);
    });
    element.addEventListener("pointermove", (event) => {
      if (!element.hasPointerCapture(event.pointerId)) return;
      const { left, width } = this.room.getBoundingClientRect();
      if (width > 0) this.#move((event.clientX - left) / width);
    });
  }

  #key(event: KeyboardEvent): void {
    const to = placeAfter(event.key, this.#at);
    if (to === null || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopPropagation();
    this.#move(to);
  }
}

/** Where a key moves the handle; null for one that doesn't. */
export function placeAfter(key: string, at: number): number | null {
  switch (key) {
    case "ArrowRight":
    case "ArrowUp":
      return at + STEP;
    case "ArrowLeft":
    case "ArrowDown":
      return at - STEP;
    case "PageUp":
      return at + LEAP;
    case "PageDown":
      return at - LEAP;
    case "Home":
      return 0;
    case "End":
      return 1;
    default:
      return null;
  }
}

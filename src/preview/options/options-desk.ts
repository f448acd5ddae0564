/// <reference lib="dom" />
import type { PlanOptions } from "../../service/index.js";
import { type OptionPlace, OptionsPanel } from "./options-panel.js";

/** How long a text rests before its layouts are worked out anew, in milliseconds: typing goes before. */
const REST = 400;

const WORKING = "Working out the layouts ...";
const ANEW = "The text has changed: working out the layouts anew ...";

/** What the layouts ask of the extension. */
export interface OptionsEnds {
  readonly ask: (wall: string | null) => void;
  readonly take: (place: OptionPlace & { readonly version: number }) => void;
}

/** The layouts to choose from: asked for while they are shown, once the picture of a text stands. */
export class OptionsDesk {
  readonly #panel = new OptionsPanel((place) => this.#take(place));
  #wall: string | null = null;
  /** The version whose picture stands on the screen. */
  #painted: number | null = null;
  #shown: PlanOptions | null = null;
  #rest: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly ends: OptionsEnds) {}

  get element(): HTMLElement {
    return this.#panel.element;
  }

  get isOn(): boolean {
    return !this.element.hidden;
  }

  /** Shows the layouts, or no longer. */
  turn(on: boolean): void {
    this.element.hidden = !on;
    if (on) this.#askNow();
    else this.#forget();
  }

  /** Another wall is chosen, or (null) all of them. */
  set wall(wall: string | null) {
    if (wall === this.#wall) return;
    this.#wall = wall;
    this.#forget();
    this.#askNow();
  }

  /** Another plan is shown: what was told of the one before is not of it. */
  clear(wall: string | null): void {
    this.#wall = wall;
    this.#painted = null;
    this.#forget();
  }

  /** The picture of a version stands on the screen. */
  painted(version: number): void {
    const isNew = version !== this.#painted;
    this.#painted = version;
    if (!this.isOn || !isNew) return;
    this.#panel.stale = this.#shown !== null;
    this.#panel.say(this.#shown ? ANEW : WORKING);
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.ends.ask(this.#wall), this.#shown ? REST : 0);
  }

  /** The answer; one to what was asked before is passed over. */
  answer(options: PlanOptions): void {
    if (!this.isOn || options.wall !== this.#wall) return;
    this.#shown = options;
    this.#panel.show(options);
    this.#panel.stale = this.#isStale;
    const count = options.groups.reduce((sum, group) => sum + group.options.length, 0);
    this.#panel.say(this.#isStale ? ANEW : `${count} ${count === 1 ? "layout" : "layouts"}`);
  }

  get #isStale(): boolean {
    return this.#painted !== null && this.#shown?.version !== this.#painted;
  }

  #askNow(): void {
    clearTimeout(this.#rest);
    if (!this.isOn || this.#painted === null) return;
    this.#panel.say(WORKING);
    this.ends.ask(this.#wall);
  }

  #forget(): void {
    clearTimeout(this.#rest);
    this.#shown = null;
    this.#panel.show(null);
    this.#panel.stale = false;
    this.#panel.say(WORKING);
  }

  #take(place: OptionPlace): void {
    if (!this.#shown || this.#isStale) return;
    this.ends.take({ ...place, version: this.#shown.version });
  }
}

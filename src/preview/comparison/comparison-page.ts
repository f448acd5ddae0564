/// <reference lib="dom" />
import type { ComparisonLook, PlanComparison } from "../../service/index.js";
import {
  type Against,
  type FromComparison,
  isComparisonState,
  isToComparison,
  type ToComparison,
} from "../comparison-messages.js";
import { make, makeButton } from "../elements.js";
import type { EditorPage } from "../host.js";
import { actOfKey, lookBy } from "../key-acts.js";
import { watchPointer } from "../pan-zoom.js";
import { shareWords, ZOOM_STEP } from "../toolbar.js";
import { ACTUAL_SCALE } from "../view.js";
import { Board } from "./board.js";
import { BoardSight } from "./board-sight.js";
import { Handle } from "./handle.js";
import { noteOf, withComparison } from "./shown-comparison.js";
import { SummaryList } from "./summary-list.js";
import { WallChoice } from "./wall-choice.js";
import { WaySwitch } from "./way-switch.js";

const BOARD_HELP =
  "Arrow keys move the picture, plus and minus zoom, 0 fits it, 1 shows its actual size, W its width. " +
  "What changed is told in words beside it.";

/** The page of a comparison: both states of a wall, and in words what changed on all of them. */
export class ComparisonPage {
  readonly #title = make("h1", { class: "unseen" }, "What changed");
  readonly #against = make("p", { class: "against" });
  readonly #note = make("p", { class: "note", role: "status" });
  readonly #zoom = make("span", { class: "zoom", title: "Share of actual size" });
  readonly #ways = new WaySwitch((way) => this.#lookAt({ ...this.#look, way }));
  readonly #walls = new WallChoice((wall) => this.#lookAt({ ...this.#look, wall }));
  readonly #summary = new SummaryList();
  readonly #board = new Board();
  readonly #handle = new Handle(this.#board.element, (share) => {
    this.#board.handle = share;
    this.#keep();
  });
  readonly #sight = new BoardSight(this.#board, ({ scale }) => {
    this.#zoom.textContent = shareWords(scale / ACTUAL_SCALE);
  });
  #uri: string | null = null;
  #name = "";
  #with: Against | null = null;
  #look: ComparisonLook = { way: "sides", wall: null };
  #shown: PlanComparison | null = null;
  /** What is said over the picture that isn't the comparison's own. */
  #missing: string | null = null;
  /** The way and the wall that are drawn. */
  #drawn = "";

  constructor(
    page: HTMLElement,
    private readonly editor: EditorPage,
  ) {
    this.#build(page);
    this.#recall();
    window.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
      if (isToComparison(data)) this.#listen(data);
    });
    this.#send({ type: "ready" });
  }

  #build(page: HTMLElement): void {
    const { element } = this.#board;
    element.setAttribute("role", "application");
    element.setAttribute("aria-describedby", "board-help");
    element.append(this.#handle.element);
    const closer = makeButton("+", "Zoom in", () => this.#sight.zoom(ZOOM_STEP));
    const out = makeButton("−", "Zoom out", () => this.#sight.zoom(1 / ZOOM_STEP));
    closer.setAttribute("aria-label", "Zoom in");
    out.setAttribute("aria-label", "Zoom out");
    const header = make(
      "header",
      { class: "toolbar", "aria-label": "Picture" },
      this.#ways.element,
      make(
        "div",
        { class: "group" },
        makeButton("Fit", "Show all of it", () => this.#sight.fit("whole")),
        out,
        this.#zoom,
        closer,
      ),
      this.#against,
    );
    const help = make("p", { class: "unseen", id: "board-help" }, BOARD_HELP);
    const desk = make("div", { class: "desk" }, element, this.#summary.element);
    this.#note.hidden = true;
    const main = make("main", {}, this.#title, this.#walls.element, this.#note, desk, help);
    page.append(header, main);
    watchPointer(element, {
      panBy: (dx, dy) => this.#sight.panBy(dx, dy),
      zoomAt: (at, factor) => this.#sight.zoom(factor, at),
      pointAt: () => undefined,
      tap: () => undefined,
    });
    element.addEventListener("keydown", (event) => this.#key(event));
    new ResizeObserver(() => this.#sight.settle()).observe(element);
    this.#walls.show([], null);
    this.#board.show(null);
  }

  #recall(): void {
    const state = this.editor.getState();
    if (!isComparisonState(state)) return;
    const { handle } = state;
    if (typeof handle !== "number" || !Number.isFinite(handle)) return;
    this.#handle.at = handle;
    this.#board.handle = this.#handle.at;
  }

  #listen(message: ToComparison): void {
    switch (message.type) {
      case "plan":
        this.#begin(message);
        return;
      case "against":
        this.#missing = null;
        this.#against.textContent = `${this.#name} as it is now, against ${message.words}`;
        this.#sayNote();
        return;
      case "missing":
        this.#missing = message.why;
        this.#sayNote();
        return;
      case "comparison":
        if (message.comparison.uri === this.#uri) this.#show(message.comparison);
        return;
    }
  }

  #begin({ uri, name, against, look }: Extract<ToComparison, { type: "plan" }>): void {
    this.#uri = uri;
    this.#name = name;
    this.#with = against;
    this.#look = look;
    this.#title.textContent = `What changed in ${name}`;
    this.#ways.way = look.way;
    this.#shown = null;
    this.#missing = null;
    this.#against.textContent = "";
    this.#keep();
  }

  #show(comparison: PlanComparison): void {
    const shown = withComparison(this.#shown, comparison);
    this.#shown = comparison;
    this.#sayNote();
    // What is drawn stays while the text can't be understood.
    if (shown !== comparison) return;
    const { sections, walls, wall, headline, picture, version } = comparison;
    this.#summary.show(sections);
    this.#walls.show(walls, wall);
    this.#board.element.setAttribute("aria-label", `Picture of what changed: ${headline}`);
    this.#board.show(picture);
    this.#handle.element.hidden = picture?.way !== "slider";
    const drawn = JSON.stringify([this.#uri, picture?.way, wall]);
    if (drawn === this.#drawn) this.#sight.settle();
    else this.#sight.begin();
    this.#drawn = drawn;
    const way = picture?.way ?? this.#look.way;
    requestAnimationFrame(() => this.#send({ type: "painted", version, way }));
  }

  #sayNote(): void {
    const note = this.#missing ?? noteOf(this.#shown);
    this.#note.hidden = note === null;
    this.#note.textContent = note ?? "";
  }

  #lookAt(look: ComparisonLook): void {
    this.#look = look;
    this.#ways.way = look.way;
    this.#send({ type: "look", look });
    this.#keep();
  }

  #key(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = actOfKey(event.key, event.shiftKey, false);
    if (act && lookBy(act, this.#sight)) event.preventDefault();
  }

  #keep(): void {
    if (this.#uri === null || !this.#with) return;
    const handle = this.#handle.at;
    this.editor.setState({ uri: this.#uri, against: this.#with, look: this.#look, handle });
  }

  #send(message: FromComparison): void {
    this.editor.postMessage(message);
  }
}

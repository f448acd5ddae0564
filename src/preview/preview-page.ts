/// <reference lib="dom" />
import { closeMenus } from "./close-menus.js";
import { make } from "./elements.js";

const STAGE_HELP =
  "Arrow keys move the picture, plus and minus zoom, 0 fits it, 1 shows its actual size, W its " +
  "width. P walks from piece to piece: arrow keys step, Page Up and Page Down change the wall, Enter goes to " +
  "the line, Escape ends.";

/** What stands on the page of a preview. */
export interface PageParts {
  readonly toolbar: HTMLElement;
  readonly strip: HTMLElement;
  readonly options: HTMLElement;
  readonly stage: HTMLElement;
  /** Cards over the picture. */
  readonly cards: readonly HTMLElement[];
  readonly findings: HTMLElement;
}

/** The page of a preview, built once: its parts, and the words that stand and are spoken between them. */
export class PreviewPage {
  readonly #stage: HTMLElement;
  readonly #title = make("h1", { class: "unseen" }, "Plan preview");
  readonly #note = make("p", { class: "note", role: "status" });
  readonly #spoken = make("div", { class: "unseen", role: "log", "aria-live": "polite" });

  constructor(page: HTMLElement, { toolbar, strip, options, stage, cards, findings }: PageParts) {
    this.#stage = stage;
    const help = make("p", { class: "unseen", id: "stage-help" }, STAGE_HELP);
    stage.setAttribute("role", "application");
    stage.setAttribute("aria-label", "Picture of the plan");
    stage.setAttribute("aria-describedby", "stage-help");
    stage.append(...cards);
    this.#note.hidden = true;
    const desk = make("div", { class: "desk" }, stage, findings);
    const main = make("main", {}, this.#title, strip, this.#note, options, desk, help);
    page.append(toolbar, main, this.#spoken);
    closeMenus(page);
  }

  /** The name of the plan that is shown. */
  set plan(name: string) {
    this.#title.textContent = name;
    this.#stage.setAttribute("aria-label", `Picture of ${name}`);
  }

  /** What is said over the picture; null: nothing. */
  set note(note: string | null) {
    this.#note.hidden = note === null;
    this.#note.textContent = note ?? "";
  }

  /** Says a text to those who hear the page. */
  speak(text: string): void {
    this.#spoken.textContent = text;
  }
}

/// <reference lib="dom" />
import type { Page, Paper } from "../../sheets/index.js";
import { make, makeButton } from "../elements.js";
import type { EditorPage } from "../host.js";
import { type FromSheet, isToSheet, type ToSheet } from "../sheet-messages.js";
import { blockElement } from "./block-element.js";

/** The page of a setter's sheet: its pages under each other, in the editor's colours. */
export class SheetPage {
  readonly #note = make("p", { class: "note", role: "status" });
  readonly #parts = make("nav", { class: "parts", "aria-label": "Parts of the sheet" });
  readonly #pages = make("main", { class: "pages", tabindex: "0" });

  constructor(
    page: HTMLElement,
    private readonly editor: EditorPage,
  ) {
    const save = makeButton("Save...", "Save the sheet as PDF, or in another format", () =>
      this.#send({ type: "save" }),
    );
    const title = make("h1", { class: "unseen" }, "Setter's sheet");
    const bar = make(
      "header",
      { class: "toolbar", "aria-label": "Sheet" },
      title,
      this.#parts,
      save,
    );
    page.classList.add("sheet");
    page.append(bar, this.#note, this.#pages);
    window.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
      if (isToSheet(data)) this.#listen(data);
    });
    this.#send({ type: "ready" });
  }

  #listen(message: ToSheet): void {
    switch (message.type) {
      case "plan":
        this.editor.setState({ uri: message.uri });
        this.#say(`Reckoning the sheet of ${message.name}...`);
        return;
      case "missing":
        this.#say(message.why);
        return;
      case "paper":
        this.#say("");
        this.#show(message.paper);
        return;
    }
  }

  #say(words: string): void {
    this.#note.textContent = words;
    this.#note.hidden = words === "";
  }

  /** Where a person reads stays where it is: the same page, the same way down. */
  #show({ pages }: Paper): void {
    const { scrollTop } = this.#pages;
    this.#parts.replaceChildren(...pages.map(linkTo));
    this.#pages.replaceChildren(...pages.map(pageElement));
    this.#pages.scrollTop = scrollTop;
    requestAnimationFrame(() => this.#send({ type: "painted" }));
  }

  #send(message: FromSheet): void {
    this.editor.postMessage(message);
  }
}

function pageElement({ id, title, blocks }: Page): HTMLElement {
  const heading = make("h2", {}, title);
  return make("section", { id: `page-${id}`, class: "page" }, heading, ...blocks.map(blockElement));
}

function linkTo({ id, title }: Page): HTMLElement {
  return makeButton(title, `Show ${title}`, () =>
    document.getElementById(`page-${id}`)?.scrollIntoView(),
  );
}

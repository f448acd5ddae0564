/// <reference lib="dom" />
import type { PictureFinding } from "../service/index.js";
import { make } from "./elements.js";
import { quoted } from "./quoted.js";
import { countWords } from "./wall-strip.js";

/** A list longer than this helps nobody; the editor's own list of problems has them all. */
const MOST_SHOWN = 200;

const GRADES = { error: "Error", warning: "Warning", information: "Note" } as const;

/** The findings, each a button that goes to its line. */
export class FindingsList {
  readonly element = make("section", { class: "findings none", "aria-label": "Findings" });
  readonly #heading = make("h2", {}, "Findings");
  readonly #list = make("ul");
  readonly #empty = make("p", { class: "quiet" }, "Nothing found.");
  #shown = "";

  constructor(private readonly choose: (finding: PictureFinding) => void) {
    this.element.append(this.#heading, this.#empty, this.#list);
  }

  show(findings: readonly PictureFinding[], wallTitles: ReadonlyMap<string, string>): void {
    const content = JSON.stringify(findings);
    if (content === this.#shown) return;
    this.#shown = content;
    const focused = (document.activeElement as HTMLElement | null)?.dataset.finding;
    this.#heading.textContent = headingOf(findings);
    this.#empty.hidden = findings.length > 0;
    this.element.classList.toggle("none", findings.length === 0);
    const items = findings.slice(0, MOST_SHOWN).map((each, i) => this.#item(each, i, wallTitles));
    const more = findings.length - items.length;
    if (more > 0) items.push(make("li", { class: "quiet" }, `and ${more} more`));
    this.#list.replaceChildren(...items);
    if (focused !== undefined) this.#buttonOf(focused)?.focus();
  }

  /** Brings the first finding with this number in the picture into sight. */
  point(number: string | null): void {
    for (const button of this.#buttons()) {
      button.classList.toggle("pointed", number !== null && button.dataset.number === number);
    }
    this.#list.querySelector(".pointed")?.scrollIntoView({ block: "nearest" });
  }

  #item(finding: PictureFinding, index: number, titles: ReadonlyMap<string, string>): HTMLElement {
    const { number, severity, code, message, source, allowed, wall } = finding;
    const grade = GRADES[severity];
    const where = wall === null ? null : (titles.get(wall) ?? wall);
    const button = make(
      "button",
      { type: "button", "data-finding": String(index), ...(number && { "data-number": number }) },
      make("span", { class: `badge ${severity}`, "aria-hidden": "true" }, number ?? ""),
      make(
        "span",
        { class: "finding-text" },
        make(
          "span",
          { class: "finding-head" },
          make("strong", {}, grade),
          make("code", {}, code),
          ...(where === null ? [] : [make("span", {}, where)]),
        ),
        make("span", { class: "finding-message" }, ...quoted(message)),
        ...(source === null ? [] : [make("span", { class: "quiet" }, source)]),
        ...(allowed === null ? [] : [make("span", { class: "quiet" }, `Allowed: ${allowed}`)]),
      ),
    );
    button.classList.toggle("allowed", allowed !== null);
    button.addEventListener("click", () => this.choose(finding));
    return make("li", {}, button);
  }

  #buttons(): HTMLButtonElement[] {
    return Array.from(this.#list.querySelectorAll("button"));
  }

  #buttonOf(index: string): HTMLButtonElement | null {
    const buttons = this.#buttons();
    return buttons.find((button) => button.dataset.finding === index) ?? buttons.at(-1) ?? null;
  }
}

function headingOf(findings: readonly PictureFinding[]): string {
  const counted = (["error", "warning", "information"] as const).flatMap((severity) => {
    const own = findings.filter((each) => each.severity === severity && each.allowed === null);
    return own.length > 0 ? [countWords(severity, own.length)] : [];
  });
  return counted.length > 0 ? `Findings: ${counted.join(", ")}` : "Findings";
}

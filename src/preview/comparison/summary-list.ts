/// <reference lib="dom" />
import type { PlanComparison } from "../../service/index.js";
import { make } from "../elements.js";
import { quoted } from "../quoted.js";

/** Cutting: OSHA 29 CFR 1926.1153, Table 1. */
const CAUTION =
  "Before tile that is cut already is cut again: wet or with extraction. Follow local code, the " +
  "makers' instructions and a licensed trade.";

const TEXT_ONLY = "Nothing changed but the text.";

/** What a comparison says, subject by subject, in the words of the command line. */
export class SummaryList {
  /** A stop of the Tab key, since it scrolls and holds nothing that is one. */
  readonly element = make("section", {
    class: "findings summary",
    "aria-label": "What changed",
    tabindex: "0",
  });

  show(sections: PlanComparison["sections"]): void {
    const told = sections.flatMap(({ title, lines }) => [
      make("h2", {}, title),
      make("ul", {}, ...lines.map((line) => make("li", {}, ...quoted(line)))),
    ]);
    const all = told.length > 0 ? [...told, make("p", { class: "quiet" }, CAUTION)] : [];
    this.element.replaceChildren(...(all.length > 0 ? all : [make("p", {}, TEXT_ONLY)]));
  }

  clear(): void {
    this.element.replaceChildren();
  }
}

/// <reference lib="dom" />
import type { PlanOption } from "../../service/index.js";
import { make } from "../elements.js";
import { quoted } from "../quoted.js";
import { optionPicture } from "./option-picture.js";

/**
 * One layout: its picture, a button that takes it, where it stands, how it starts, what becomes of the
 * wishes, and its figures. Each part is one row of the card, so that cards beside each other line up.
 */
export function optionCard(option: PlanOption, take: () => void): HTMLElement {
  const { letter, had, standing, walls, beside } = option;
  const heading = make("h4", {}, letter, ...(had ? [make("span", {}, "in the plan")] : []));
  return make(
    "li",
    { class: "option", ...(had && { "data-had": "" }) },
    optionPicture(walls, beside),
    make("div", { class: "option-head" }, heading, takePart(option, take)),
    make("p", {}, ...quoted(standing)),
    startsPart(option),
    wishesPart(option),
    make("dl", {}, ...option.figures.flatMap(figureParts)),
  );
}

function takePart({ letter, had, edits }: PlanOption, take: () => void): HTMLElement {
  if (edits.length === 0) {
    const why = had ? "as it is written" : "can't be written: see what is found in the text";
    return make("span", { class: "quiet" }, why);
  }
  const title = had
    ? "Write what was chosen into the text, as one edit"
    : "Write this layout into the text, as one edit";
  const label = had ? `Write ${letter} down` : `Take ${letter}`;
  const button = make("button", { type: "button", class: "take", title }, label);
  button.addEventListener("click", take);
  return button;
}

/** The starts of several walls stand behind a heading that opens. */
function startsPart({ starts }: PlanOption): HTMLElement {
  if (starts.length <= 1) return make("p", { class: "quiet" }, ...starts);
  const list = make("ul", {}, ...starts.map((each) => make("li", {}, each)));
  return make("details", {}, make("summary", {}, "Starts"), list);
}

function wishesPart({ wishes }: PlanOption): HTMLElement {
  return make(
    "ul",
    { class: "wishes" },
    ...wishes.map(({ words, isMet, told }) =>
      make(
        "li",
        { class: isMet ? "met" : "missed" },
        make("span", { class: "wish-sign", "aria-hidden": "true" }, isMet ? "✓" : "✗"),
        make("span", {}, make("span", { class: "wish" }, words), ": ", ...quoted(told)),
      ),
    ),
  );
}

function figureParts([name, figure]: PlanOption["figures"][number]): HTMLElement[] {
  return [make("dt", {}, name), make("dd", {}, figure)];
}

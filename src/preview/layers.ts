/// <reference lib="dom" />
import { make } from "./elements.js";
import { LAYERS, type Layer } from "./kept-view.js";

const WORDS: Readonly<Record<Layer, string>> = {
  dimensions: "Dimensions",
  labels: "Labels and numbers",
  cuts: "Cuts marked",
  soft: "Soft joints",
  hidden: "Hidden strips",
  notes: "Legend and notes",
};

/** Switches for what is drawn. The picture itself is shown and hidden by classes (preview.css). */
export class LayerSwitches {
  readonly element: HTMLDetailsElement;
  readonly #boxes = new Map<Layer, HTMLInputElement>();

  constructor(private readonly changed: (off: readonly Layer[]) => void) {
    const list = make("div", { class: "layer-list", role: "group", "aria-label": "Layers" });
    for (const layer of LAYERS) {
      const box = make("input", { type: "checkbox" });
      box.checked = true;
      box.addEventListener("change", () => this.changed(this.off));
      this.#boxes.set(layer, box);
      list.append(make("label", {}, box, WORDS[layer]));
    }
    this.element = make("details", { class: "menu layers" }, make("summary", {}, "Layers"), list);
  }

  get off(): readonly Layer[] {
    return LAYERS.filter((layer) => !this.#boxes.get(layer)!.checked);
  }

  set off(layers: readonly Layer[]) {
    for (const [layer, box] of this.#boxes) box.checked = !layers.includes(layer);
  }
}

/** The class that a layer's absence gives to the stage. */
export function hiddenClass(layer: Layer): string {
  return `without-${layer}`;
}

export function applyLayers(stage: HTMLElement, off: readonly Layer[]): void {
  for (const layer of LAYERS) stage.classList.toggle(hiddenClass(layer), off.includes(layer));
}

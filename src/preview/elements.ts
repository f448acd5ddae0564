/// <reference lib="dom" />

/** Attributes, and what is inside: texts become text nodes, never markup. */
type Attributes = Readonly<Record<string, string>>;
type Inside = readonly (Node | string)[];

export function make<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Attributes = {},
  ...inside: Inside
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...inside);
  return element;
}

const SVG = "http://www.w3.org/2000/svg";

export function makeSvg<Name extends keyof SVGElementTagNameMap>(
  name: Name,
  attributes: Attributes = {},
  ...inside: Inside
): SVGElementTagNameMap[Name] {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...inside);
  return element;
}

export function makeButton(label: string, title: string, act: () => void): HTMLButtonElement {
  const button = make("button", { type: "button", title }, label);
  button.addEventListener("click", act);
  return button;
}

import type { PrintableElement } from "./print-element.js";
import { TONES, type ToneName } from "./theme.js";

/** An element of a picture as it is printed: black on white, every paint said outright. */
export interface PaperElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** The text that it holds; null where it holds elements. */
  readonly text: string | null;
  readonly children: readonly PaperElement[];
}

/** What a printed picture has no use for: its style sheet, words for those who hear it, its ground. */
const UNPRINTED: ReadonlySet<string> = new Set(["style", "title", "desc"]);
const GROUND = "gl-paper";

/** Names for hosts, which mean nothing on paper. */
const UNPRINTED_ATTRIBUTES = /^(id|class|role|aria-.*|data-.*)$/;

/** A joint in its true width is a hair on paper: there, each piece has the finest line round it. */
const PIECES: ReadonlySet<string> = new Set(["whole", "cut", "notch", "scribe", "hole"]);
const JOINT_LINE = "#555555";

/** A drawn element as it is printed; `hairline` is the width of the finest line, in millimetres of wall. */
export function paperElement(element: PrintableElement, hairline: number): PaperElement {
  return onPaper(element, hairline, false);
}

function onPaper(element: PrintableElement, hairline: number, ofPieces: boolean): PaperElement {
  const told = new Map([...element.attributes].map(({ name, value }) => [name, value]));
  const attributes: Record<string, string> = {};
  for (const [name, value] of told) {
    if (!UNPRINTED_ATTRIBUTES.test(name)) attributes[name] = value;
  }
  Object.assign(attributes, plainPaints(told.get("class") ?? ""));
  const children = [...element.childNodes];
  if (ofPieces && element.nodeName === "path") {
    attributes.stroke = JOINT_LINE;
    attributes["stroke-width"] = String(hairline);
  }
  const isText = children.length > 0 && children.every((child) => child.data !== undefined);
  if (isText) {
    const text = children.map((child) => child.data!).join("");
    return { name: element.nodeName, attributes, text, children: [] };
  }
  const kind = told.get("data-kind");
  const within = element.nodeName === "g" && kind !== undefined && PIECES.has(kind);
  const printed = children.filter((child) => !UNPRINTED.has(child.nodeName) && !isGround(child));
  return {
    name: element.nodeName,
    attributes,
    text: null,
    children: printed.map((child) => onPaper(child, hairline, within)),
  };
}

function isGround(element: PrintableElement): boolean {
  return [...element.attributes].some(({ name, value }) => name === "id" && value === GROUND);
}

/** `gl-fill-tile gl-stroke-ink` as the tones of black and white. */
function plainPaints(classes: string): Record<string, string> {
  const paints: Record<string, string> = {};
  for (const [, paint, name] of classes.matchAll(/\bgl-(fill|stroke)-([a-z-]+)/g)) {
    paints[paint!] = TONES[name as ToneName].plain;
  }
  return paints;
}

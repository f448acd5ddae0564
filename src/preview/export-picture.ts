/// <reference lib="dom" />
import type { ExportFormat, FromPreview } from "./messages.js";
import type { Size } from "./view.js";

/** A picture file this many times as fine as the screen's CSS pixels. */
const FINENESS = 2;
/** Canvases stop at about 16,384 a side in browsers; half of that is plenty. */
const MOST_PIXELS = 8192;

/** The message that brings what is seen of a drawing as a file, or that says why it can't. */
export async function exportSeen(
  drawn: SVGSVGElement,
  room: Size,
  format: ExportFormat,
): Promise<FromPreview> {
  try {
    const svg = svgOfSeen(drawn, room);
    const data = format === "svg" ? svg : await pngOfSeen(svg, room);
    return { type: "exported", format, data };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { type: "fault", message: `The picture could not be saved: ${reason}` };
  }
}

/**
 * What is seen of a drawing as SVG of its own: hidden layers left out, each colour written at its
 * element as it shows here, so that a program without style sheets draws the same.
 */
function svgOfSeen(drawn: SVGSVGElement, room: Size): string {
  const copy = drawn.cloneNode(true) as SVGSVGElement;
  fixColours(drawn, copy);
  copy.removeAttribute("class");
  copy.setAttribute("width", String(room.width));
  copy.setAttribute("height", String(room.height));
  copy.setAttribute("font-family", getComputedStyle(drawn).fontFamily);
  return `${new XMLSerializer().serializeToString(copy)}\n`;
}

/** The same as PNG, in base64. */
async function pngOfSeen(svg: string, room: Size): Promise<string> {
  const fineness = Math.min(FINENESS, MOST_PIXELS / Math.max(room.width, room.height));
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(room.width * fineness);
  canvas.height = Math.round(room.height * fineness);
  canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL("image/png").split(",")[1]!;
}

function fixColours(drawn: SVGElement, copy: SVGElement): void {
  const plain = plainColours();
  const copies = Array.from(copy.querySelectorAll<SVGElement>("*"));
  drawn.querySelectorAll<SVGElement>("*").forEach((element, i) => {
    const target = copies[i]!;
    const style = getComputedStyle(element);
    if (style.display === "none" && !isMeta(element)) {
      target.remove();
      return;
    }
    if (
      target.hasAttribute("data-kind") ||
      target.hasAttribute("fill") ||
      target.hasAttribute("class")
    ) {
      setColour(target, "fill", plain(style.fill));
      setColour(target, "stroke", plain(style.stroke));
    }
    target.removeAttribute("class");
  });
}

function setColour(element: SVGElement, name: "fill" | "stroke", colour: string): void {
  if (colour !== "" && (colour !== "none" || element.hasAttribute(name))) {
    element.setAttribute(name, colour);
  }
}

/** Elements that are never displayed, and stay. */
function isMeta(element: Element): boolean {
  return element.closest("defs, title, desc, style") !== null;
}

/** Colours as every SVG program reads them: `#rrggbb`; a paint server's address stays. */
function plainColours(): (colour: string) => string {
  const known = new Map<string, string>();
  const context = new OffscreenCanvas(1, 1).getContext("2d", { willReadFrequently: true })!;
  return (colour) => {
    if (colour === "" || colour === "none" || colour.startsWith("url(")) {
      return colour.replace(/^url\("(.*)"\)$/, "url($1)");
    }
    let plain = known.get(colour);
    if (plain === undefined) {
      context.clearRect(0, 0, 1, 1);
      context.fillStyle = colour;
      context.fillRect(0, 0, 1, 1);
      const [red, green, blue] = context.getImageData(0, 0, 1, 1).data;
      plain = `#${[red!, green!, blue!].map((c) => c.toString(16).padStart(2, "0")).join("")}`;
      known.set(colour, plain);
    }
    return plain;
  };
}

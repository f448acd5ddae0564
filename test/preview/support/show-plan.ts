import { ALONE } from "../../support/solve-text.js";
import type { Picture } from "../../../src/service/index.js";
import { openPreview, type OpenOptions, type OpenPreview } from "./open-preview.js";
import { planPicture } from "./plan-picture.js";

export const URI = "file:///two-walls.tileplan";

/** Two walls, with a sliver, a window and a hidden strip. */
export const TWO_WALLS = `plan "Two walls"
units inch
bed 1/8

tile field "3 x 6 white" {
  face 5 7/8 x 2 7/8
  thickness 5/16
}

wall back "Back wall" {
  size 60 x 48
  bottom pan movement 1/8
  left corner side under movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8

  window sash {
    at 18, 24
    size 24 x 12
    movement 1/8
  }

  lay field {
    bond running 1/2
    joint 1/16
    across tile centred on wall
    up full course from bottom
  }
}

wall side "Side wall" {
  size 36 x 48
  bottom pan movement 1/8
  left wall movement 1/8
  right corner back over movement 1/8
  top ceiling movement 1/8

  lay field {
    bond stack
    joint 1/16
    across full tile from left
    up full course from bottom
  }
}
`;

export function twoWalls(version: number, text = TWO_WALLS): Picture {
  return planPicture(text, ALONE, version, URI);
}

/** A line of the plan, counted from zero. */
export function lineOf(words: string): number {
  return TWO_WALLS.split("\n").findIndex((line) => line.includes(words));
}

/** The preview with a picture painted: of the two walls, unless told. */
export async function showPlan(
  options: OpenOptions = {},
  picture: Picture = twoWalls(1),
): Promise<OpenPreview> {
  const preview = await openPreview(options);
  await preview.post({
    type: "plan",
    uri: picture.uri,
    name: "two-walls",
    pinned: false,
    marked: true,
  });
  await paint(preview, picture);
  return preview;
}

/** Posts a picture and waits until it stands on the screen. */
export async function paint(preview: OpenPreview, picture: Picture): Promise<void> {
  const past = preview.sent().length;
  await preview.post({ type: "picture", picture });
  await preview.waitFor("painted", past);
}

/** What the stage shows: the drawing's view box. */
export async function seenBox({ page }: OpenPreview): Promise<number[]> {
  const box = await page.locator(".picture").getAttribute("viewBox");
  return box!.split(" ").map(Number);
}

/** A place of the picture, in the window's pixels. */
export async function pixelOf(
  preview: OpenPreview,
  x: number,
  y: number,
): Promise<[number, number]> {
  const [left, top, width] = await seenBox(preview);
  const stage = (await preview.page.locator(".stage").boundingBox())!;
  const scale = stage.width / width!;
  return [stage.x + (x - left!) * scale, stage.y + (y - top!) * scale];
}

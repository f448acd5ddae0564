import type { Scene } from "../../drawing/index.js";
import { type Flow, LEADING, SIZE } from "./flow.js";

/** A picture that fits the rest of a sheet at this share of the size it could have stays there. */
const NEARLY = 0.85;

/** Letters in a picture are to be this high at least; where turning the sheet helps to it, it is turned. */
const LEGIBLE = 7.5;
const WORTH_TURNING = 1.25;

/** A picture as large as the sheet lets it be, its caption under it. */
export function layPicture(flow: Flow, scene: Scene, caption: string): void {
  for (const letter of lettersMissing(flow, scene)) flow.missing.add(letter);
  const wide = scene.view.right - scene.view.left;
  const high = scene.view.bottom - scene.view.top;
  const captionHeight = caption === "" ? 0 : 2 * SIZE.small * LEADING + 4;
  const best = Math.min(flow.width / wide, (flow.fullRoom - captionHeight) / high);
  const here = Math.min(flow.width / wide, (flow.room - captionHeight - 8) / high);
  if (flow.upright && best * scene.em < LEGIBLE) {
    // What the sheet has one way, it has about the other way when it is turned.
    const turned = Math.min((flow.fullRoom + 40) / wide, (flow.width - captionHeight - 100) / high);
    if (turned > best * WORTH_TURNING) {
      layTurned(flow, scene, caption);
      return;
    }
  }
  if (here < NEARLY * best && !flow.empty) {
    flow.begin();
    place(flow, scene, caption, best, captionHeight);
    return;
  }
  flow.space(8);
  place(flow, scene, caption, here, captionHeight);
}

function layTurned(flow: Flow, scene: Scene, caption: string): void {
  flow.begin(false);
  const captionHeight = caption === "" ? 0 : 2 * SIZE.small * LEADING + 4;
  const { left, right, top, bottom } = scene.view;
  const scale = Math.min(
    flow.width / (right - left),
    (flow.fullRoom - captionHeight) / (bottom - top),
  );
  place(flow, scene, caption, scale, captionHeight);
  flow.begin();
}

function place(
  flow: Flow,
  scene: Scene,
  caption: string,
  scale: number,
  captionHeight: number,
): void {
  const { view } = scene;
  const wide = (view.right - view.left) * scale;
  const top = flow.take((view.bottom - view.top) * scale + captionHeight);
  flow.put({ kind: "picture", scene, left: flow.left + (flow.width - wide) / 2, top, scale });
  let y = top + (view.bottom - view.top) * scale + 3;
  for (const line of flow.wrap(caption, flow.width, SIZE.small)) {
    flow.line(line, flow.left, y, SIZE.small);
    y += SIZE.small * LEADING;
  }
  flow.take(Math.max(0, y - flow.y) + 4);
}

function lettersMissing(flow: Flow, scene: Scene): string[] {
  const labels = [...scene.labels, ...scene.walls.flatMap((wall) => wall.labels)];
  return labels.flatMap(({ text }) => flow.faces.missingIn(text));
}

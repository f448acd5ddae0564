import { findBrowser } from "../../.scripts/editor/browser.mjs";
import { closeBrowser, openPreview, type OpenPreview } from "../preview/support/open-preview.js";
import { planPicture } from "../preview/support/plan-picture.js";
import { timePaint } from "../preview/support/time-paint.js";
import { changed, example, squareWall } from "./plans.js";
import { summarise, type Timing } from "./statistics.js";
import type { Bar } from "./table.js";

const URI = "file:///bench.tileplan";

/**
 * From a changed text to its painted picture, in Chromium: the engine here, then from the message in
 * the preview's page to the end of the frame. What carries the message between processes is not in it.
 */
export async function benchPaintedPicture(): Promise<{
  timings: Timing[];
  bars: Bar[];
  note?: string;
}> {
  if (findBrowser() === null) {
    return { timings: [], bars: [], note: "No Chromium is installed: painting is not measured." };
  }
  const preview = await openPreview({ width: 1000, height: 800 });
  try {
    await preview.post({ type: "plan", uri: URI, name: "bench", pinned: false, marked: true });
    const three = example("three-walls.tileplan");
    const typing = await timeRounds(preview, "keystroke -> painted", 40, (round) =>
      planPicture(changed(three.text, round), three.source, round, URI),
    );
    const many = squareWall(20_000);
    const source = { file: "many.tileplan", root: "", read: () => null };
    const large = await timeRounds(preview, "keystroke -> painted, 20,000", 12, (round) =>
      planPicture(`${many}# ${round}\n`, source, 1000 + round, URI),
    );
    return {
      timings: [...typing, ...large],
      bars: [
        { name: typing[0]!.name, found: typing[0]!.median, limit: 33, sense: "under", unit: "ms" },
        { name: large[0]!.name, found: large[0]!.median, limit: 250, sense: "under", unit: "ms" },
      ],
    };
  } finally {
    await preview.close();
    await closeBrowser();
  }
}

/** The whole way, and the part of it in the page. */
async function timeRounds(
  preview: OpenPreview,
  name: string,
  rounds: number,
  pictureOf: (round: number) => ReturnType<typeof planPicture>,
): Promise<Timing[]> {
  const warmup = Math.ceil(rounds / 4);
  const whole: number[] = [];
  const painting: number[] = [];
  for (let round = 1; round <= warmup + rounds; round++) {
    const begun = performance.now();
    const picture = pictureOf(round);
    const engine = performance.now() - begun;
    const paint = await timePaint(preview, picture);
    if (round <= warmup) continue;
    whole.push(engine + paint);
    painting.push(paint);
  }
  return [summarise(name, whole), summarise("  in the page", painting)];
}

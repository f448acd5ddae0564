import { findBrowser } from "../../.scripts/editor/browser.mjs";
import type { Source } from "../../src/language/index.js";
import type { ToldChanges } from "../../src/preview/messages.js";
import { createService } from "../../src/service/index.js";
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
    const marked = await timeRounds(
      preview,
      "keystroke -> painted, changes marked",
      40,
      (round) => planPicture(changed(three.text, round), three.source, 100 + round, URI),
      (round) => planChanges(three.text, changed(three.text, round), three.source, 100 + round),
    );
    const many = squareWall(20_000);
    const source = { file: "many.tileplan", root: "", read: () => null };
    const large = await timeRounds(preview, "keystroke -> painted, 20,000", 12, (round) =>
      planPicture(`${many}# ${round}\n`, source, 1000 + round, URI),
    );
    return {
      timings: [...typing, ...marked, ...large],
      bars: [
        { name: typing[0]!.name, found: typing[0]!.median, limit: 33, sense: "under", unit: "ms" },
        { name: marked[0]!.name, found: marked[0]!.median, limit: 33, sense: "under", unit: "ms" },
        { name: large[0]!.name, found: large[0]!.median, limit: 250, sense: "under", unit: "ms" },
      ],
    };
  } finally {
    await preview.close();
    await closeBrowser();
  }
}

/** What the server tells of changes once a picture is sent. */
function planChanges(before: string, after: string, source: Source, version: number): ToldChanges {
  const workspace = {
    read: (file: string) => (file === source.file ? after : source.read(file)),
    rootOf: () => source.root,
    files: () => [source.file],
    uriOf: () => URI,
  };
  const service = createService(workspace);
  const document = { file: source.file, uri: URI, version, text: after };
  const old = service.oldPlan({ ...document, version: 0, text: before }, workspace);
  return { changes: service.pictureChanges(document, old)!, since: "the last commit" };
}

/**
 * The whole way, and the part of it in the page. Changes are told behind each picture, as the server
 * does, so that each is painted under the marks of the one before.
 */
async function timeRounds(
  preview: OpenPreview,
  name: string,
  rounds: number,
  pictureOf: (round: number) => ReturnType<typeof planPicture>,
  changesOf?: (round: number) => ToldChanges,
): Promise<Timing[]> {
  const warmup = Math.ceil(rounds / 4);
  const whole: number[] = [];
  const painting: number[] = [];
  for (let round = 1; round <= warmup + rounds; round++) {
    const begun = performance.now();
    const picture = pictureOf(round);
    const engine = performance.now() - begun;
    const paint = await timePaint(preview, picture);
    if (changesOf) await preview.post({ type: "changes", uri: URI, told: changesOf(round) });
    if (round <= warmup) continue;
    whole.push(engine + paint);
    painting.push(paint);
  }
  return [summarise(name, whole), summarise("  in the page", painting)];
}

import type { Against } from "../../../src/preview/comparison-messages.js";
import type { Source } from "../../../src/language/index.js";
import {
  type ComparisonLook,
  createService,
  type PictureChanges,
  type PlanComparison,
} from "../../../src/service/index.js";
import { ALONE } from "../../support/solve-text.js";
import { openPreview, type OpenOptions, type OpenPreview } from "./open-preview.js";
import { TWO_WALLS, URI } from "./show-plan.js";

export const AGAINST: Against = { kind: "last commit" };
export const SINCE = 'the last commit, 1a2b3c4 "Centre the window"';

/** The two walls with the window moved. */
export const MOVED = TWO_WALLS.replace("at 18, 24", "at 20, 24");

/** Two texts, served as the server does. */
function served(before: string, after: string, version: number, source: Source) {
  const service = createService({
    read: (file) => (file === source.file ? after : source.read(file)),
    rootOf: () => source.root,
    files: () => [source.file],
    uriOf: () => URI,
  });
  const document = { file: source.file, uri: URI, version, text: after };
  const round = { read: source.read, rootOf: () => source.root, files: () => [], uriOf: () => URI };
  const old = service.oldPlan({ ...document, version: 0, text: before }, round);
  return { service, document, old };
}

export function comparisonOf(
  look: ComparisonLook,
  before = TWO_WALLS,
  after = MOVED,
  version = 1,
  source: Source = ALONE,
): PlanComparison {
  const { service, document, old } = served(before, after, version, source);
  return service.comparison(document, old, look);
}

export function changesOf(before = TWO_WALLS, after = MOVED, version = 1): PictureChanges {
  const { service, document, old } = served(before, after, version, ALONE);
  return service.pictureChanges(document, old)!;
}

/** The page of a comparison, with a picture painted. */
export async function showComparison(
  options: OpenOptions,
  comparison: PlanComparison,
  look: ComparisonLook = { way: comparison.picture?.way ?? "sides", wall: comparison.wall },
): Promise<OpenPreview> {
  const page = await openPreview({ ...options, shows: "comparison" });
  await page.post({ type: "plan", uri: URI, name: "two-walls.tileplan", against: AGAINST, look });
  await page.post({ type: "against", words: SINCE });
  await paintComparison(page, comparison);
  return page;
}

export async function paintComparison(
  page: OpenPreview,
  comparison: PlanComparison,
): Promise<void> {
  const past = page.sent().length;
  await page.post({ type: "comparison", comparison });
  await page.waitFor("painted", past);
}

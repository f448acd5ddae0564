import { createService, type Picture, type PlanOptions } from "../../../src/service/index.js";
import { ALONE } from "../../support/solve-text.js";
import { TURNS } from "../../service/plans.js";
import { TWO_WALLS, URI } from "./show-plan.js";

/** The two walls with wishes that collide: courses that meet, and whole ones over the window's sill. */
export const WISHED = TWO_WALLS.replaceAll("    up full course from bottom\n", "").replace(
  "bed 1/8\n",
  "bed 1/8\nprefer {\n  courses meet\n  whole courses at sill of sash\n  whole courses at bottom\n}\n",
);

function served(text: string, version: number) {
  const service = createService({
    read: (file) => (file === ALONE.file ? text : null),
    rootOf: () => ALONE.root,
    files: () => [ALONE.file],
    uriOf: () => URI,
  });
  return { service, document: { file: ALONE.file, uri: URI, version, text } };
}

/** The layouts of a text, as the service makes them. */
export async function planOptions(
  text: string,
  version = 1,
  wall: string | null = null,
): Promise<PlanOptions> {
  const { service, document } = served(text, version);
  return (await service.options(document, wall, TURNS))!;
}

/** A picture with the room unfolded. */
export function roomPictureOf(text: string, version = 1): Picture {
  const { service, document } = served(text, version);
  return service.picture(document, true);
}

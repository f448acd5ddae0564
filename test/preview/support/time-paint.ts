/// <reference lib="dom" />
import type { Picture } from "../../../src/service/index.js";
import type { OpenPreview } from "./open-preview.js";

/**
 * Milliseconds from a picture's message in the page to the end of the frame that shows it: its script
 * has run, styles and layout are worked out, and the frame's painting is handed on.
 */
export function timePaint({ page }: OpenPreview, picture: Picture): Promise<number> {
  return page.evaluate(
    (sent) =>
      new Promise<number>((resolve) => {
        const begun = performance.now();
        window.addEventListener("gaugelath-painted", () => resolve(performance.now() - begun), {
          once: true,
        });
        window.postMessage({ type: "picture", picture: sent });
      }),
    picture,
  );
}

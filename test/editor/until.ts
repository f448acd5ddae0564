import { picture } from "./hands.js";

/** How long a test waits for what should come, in milliseconds. */
const PATIENCE = 15_000;
const PAUSE = 25;

/** Looks again and again until there is something; throws with its name when it doesn't come. */
export async function until<Found>(
  what: string,
  look: () => Found | null | undefined | false | PromiseLike<Found | null | undefined | false>,
): Promise<Found> {
  const end = Date.now() + PATIENCE;
  for (;;) {
    const found = await look();
    if (found !== null && found !== undefined && found !== false) return found;
    if (Date.now() > end)
      throw new Error(`Waited for ${what}; it did not come\n${await picture()}`);
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
  }
}

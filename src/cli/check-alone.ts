import { readArguments } from "./arguments.js";
import { check } from "./check.js";
import { Failure } from "./failure.js";
import { sayFailure } from "./failure-text.js";
import type { Host } from "./host.js";
import { EXIT } from "./tally.js";

/** Carries out `gaugelath check` and no other command, and gives the exit code. */
export async function checkAlone(words: readonly string[], host: Host): Promise<number> {
  try {
    const request = readArguments(words);
    if (request.command !== "check") throw new Failure("nothing but check is done here");
    return await check(request, host);
  } catch (error) {
    if (!(error instanceof Failure)) throw error;
    sayFailure(error, host);
    return EXIT.failed;
  }
}

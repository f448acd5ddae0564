import { readArguments } from "./arguments.js";
import { Failure } from "./failure.js";
import { sayFailure } from "./failure-text.js";
import { helpText } from "./help.js";
import type { Host } from "./host.js";
import type { Request } from "./request.js";
import { EXIT } from "./tally.js";
import { version } from "./version.js";

/** Carries out what the words after `gaugelath` ask for, and gives the exit code. */
export async function execute(words: readonly string[], host: Host): Promise<number> {
  try {
    return await carryOut(readArguments(words), host);
  } catch (error) {
    if (!(error instanceof Failure)) throw error;
    sayFailure(error, host);
    return EXIT.failed;
  }
}

/** Each command is loaded when it is asked for: none starts slower for the others. */
async function carryOut(request: Request, host: Host): Promise<number> {
  switch (request.command) {
    case "help":
      await host.out([helpText(request.about)]);
      return EXIT.clean;
    case "version":
      await host.out([`gaugelath ${version}\n`]);
      return EXIT.clean;
    case "check":
      return (await import("./check.js")).check(request, host);
    case "solve":
      return (await import("./solve.js")).solve(request, host);
    case "options":
      return (await import("./options.js")).options(request, host);
    case "draw":
      return (await import("./draw.js")).draw(request, host);
    case "sheet":
      return (await import("./sheet.js")).sheet(request, host);
    case "sheet-schema":
      return (await import("./sheet.js")).sheetSchema(host);
    case "tidy":
      return (await import("./tidy.js")).tidyPlans(request, host);
    case "serve":
      return (await import("./serve.js")).serve();
    case "compare":
      return (await import("./compare.js")).compare(request, host);
    case "show":
      return (await import("./show.js")).show(request, host);
    case "merge":
      return (await import("./merge.js")).merge(request, host);
  }
}

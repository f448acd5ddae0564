import { readFileSync } from "node:fs";
import { tidy } from "../language/index.js";
import { decode, type Decoded } from "./decode.js";
import { Failure, systemReason } from "./failure.js";
import { findPlans } from "./find-plans.js";
import { sayFailure } from "./failure-text.js";
import type { Host } from "./host.js";
import { shownPath } from "./paths.js";
import type { TidyRequest } from "./request.js";
import { counted, EXIT } from "./tally.js";
import { writeWhole } from "./write-whole.js";

/**
 * `gaugelath tidy`: puts plans into the house style, each file whole or not at all. With --check
 * nothing is written, and an untidy plan makes the exit 1. `-` goes from standard input to output.
 */
export async function tidyPlans(request: TidyRequest, host: Host): Promise<number> {
  if (request.places.includes("-")) return tidyInput(request, host);
  const found = findPlans(request.places, host.folder);
  const failures = [...found.failures];
  const untidy: string[] = [];
  for (const file of found.files) {
    try {
      if (tidyFile(file, request.check, host)) untidy.push(shownPath(file, host.folder));
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      failures.push(error);
    }
  }
  for (const failure of failures) sayFailure(failure, host);
  const done = request.check ? "would be tidied" : "tidied";
  const words = untidy.map((file) => `${file}: ${done}\n`);
  await host.out([...words, `${counted(found.files.length, "plan")}, ${untidy.length} ${done}\n`]);
  if (failures.length > 0) return EXIT.failed;
  return request.check && untidy.length > 0 ? EXIT.found : EXIT.clean;
}

/** Whether the file was, or would be, changed. */
function tidyFile(file: string, checkOnly: boolean, host: Host): boolean {
  const shown = shownPath(file, host.folder);
  const { text } = sound(decodeFile(file, shown), shown);
  const tidied = tidy(text);
  if (tidied === text) return false;
  if (!checkOnly) writeWhole(file, shown, [tidied]);
  return true;
}

async function tidyInput(request: TidyRequest, host: Host): Promise<number> {
  if (request.places.length > 1)
    throw new Failure("- stands alone: it is tidied to standard output");
  const { text } = sound(decode("-", await host.readStandardInput()), "-");
  const tidied = tidy(text);
  if (request.check) return tidied === text ? EXIT.clean : EXIT.found;
  await host.out([tidied]);
  return EXIT.clean;
}

function decodeFile(file: string, shown: string): Decoded {
  try {
    return decode(file, readFileSync(file));
  } catch (error) {
    if (error instanceof Failure) throw error;
    throw new Failure(`${shown}: ${systemReason(error)}`);
  }
}

/** What could not be read of a file would be lost by writing it. */
function sound(decoded: Decoded, shown: string): Decoded {
  const [fault] = decoded.diagnostics;
  if (fault) throw new Failure(`${shown}: ${fault.message}`, "it stays as it is");
  return decoded;
}

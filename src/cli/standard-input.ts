import path from "node:path";
import { Failure } from "./failure.js";
import type { Host } from "./host.js";
import { slashed } from "./paths.js";
import type { PlanFiles } from "./plan-files.js";

/** What a plan from standard input is called. */
export const INPUT_NAME = "<stdin>";

/** Reads standard input as a plan of the working folder, and gives the name it goes by. */
export async function takeStandardInput(plans: PlanFiles, host: Host): Promise<string> {
  const file = slashed(path.join(host.folder, INPUT_NAME));
  const bytes = await host.readStandardInput();
  try {
    plans.take(file, bytes);
  } catch (error) {
    if (error instanceof Failure) throw new Failure(`standard input: ${error.message}`, error.hint);
    throw error;
  }
  return file;
}

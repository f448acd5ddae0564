import process from "node:process";
import { execute } from "./execute.js";
import { processHost } from "./host.js";

/** The program: what `start.ts` runs. */
void execute(process.argv.slice(2), processHost()).then((exit) => {
  process.exitCode = exit;
});

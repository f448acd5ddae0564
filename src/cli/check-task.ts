import process from "node:process";
import { checkAlone } from "./check-alone.js";
import { processHost } from "./host.js";

/** The program of the editor's task: `check`, in one thread, since the package has no worker's program. */
void checkAlone(process.argv.slice(2), processHost(null, __dirname)).then((exit) => {
  process.exitCode = exit;
});

import path from "node:path";
import process from "node:process";
import { execute } from "./execute.js";
import { processHost } from "./host.js";

/** The program: what `start.ts` runs. A worker's stands beside it. */
const worker = path.join(__dirname, "worker.cjs");
const assets = path.join(__dirname, "..");
void execute(process.argv.slice(2), processHost(worker, assets)).then((exit) => {
  process.exitCode = exit;
});

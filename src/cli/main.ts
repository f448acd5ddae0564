import path from "node:path";
import process from "node:process";
import { execute } from "./execute.js";
import { processHost } from "./host.js";

// The program: what `start.ts` runs. A worker's stands beside it.
const worker = path.join(__dirname, "worker.cjs");
const assets = path.join(__dirname, "..");

/** The exit code, once everything is done and written. */
export const ended = execute(process.argv.slice(2), processHost(worker, assets));

#!/usr/bin/env node
import process from "node:process";
import { execute } from "./execute.js";
import { isClosedPipe, processHost } from "./host.js";

process.stdout.on("error", (error) => {
  if (!isClosedPipe(error)) throw error;
});
process.exitCode = await execute(process.argv.slice(2), processHost());

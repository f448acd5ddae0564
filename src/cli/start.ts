#!/usr/bin/env node
import path from "node:path";
import process from "node:process";
import { loadProgram } from "./load-program.js";

/** The program: cli/main.cjs, beside this file. */
const { ended } = loadProgram(
  path.join(__dirname, "cli", "main.cjs"),
) as typeof import("./main.js");
// Everything is written by then. Left to itself, the process would first collect its garbage and hand
// back its memory piece by piece.
void ended.then((exit) => process.exit(exit));

#!/usr/bin/env node
import path from "node:path";
import { loadProgram } from "./load-program.js";

/** Runs the program: cli/main.cjs, beside this file. */
loadProgram(path.join(__dirname, "cli", "main.cjs"));

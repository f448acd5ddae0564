// Running the project's own tools, one after the other.
import { spawnSync } from "node:child_process";
import path from "node:path";
import { fileURLToPath } from "node:url";

export const ROOT = fileURLToPath(new URL("..", import.meta.url));

/** Runs a tool of node_modules with Node itself (no shell, no npx); true when it exits with 0. */
export function runTool(entry, ...args) {
  return runNode([path.join(ROOT, "node_modules", entry), ...args]);
}

/** Runs a script of the project; true when it exits with 0. */
export function runScript(file, ...args) {
  return runNode([path.join(ROOT, file), ...args]);
}

function runNode(args) {
  const { status, error } = spawnSync(process.execPath, args, { cwd: ROOT, stdio: "inherit" });
  if (error) console.error(error.message);
  return status === 0;
}

// Installs the locked packages when they are missing or older than the lock, so that every command
// of the README works from an empty clone. Needs Node and npm only.
import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const lock = `${root}package-lock.json`;
/** npm writes this file at the end of an install: its age is the age of node_modules. */
const installed = `${root}node_modules/.package-lock.json`;

const [major] = process.versions.node.split(".").map(Number);
if (major < 20) {
  console.error(`Node 20 or newer is wanted; this is Node ${process.versions.node}.`);
  process.exit(2);
}

if (!existsSync(installed) || statSync(installed).mtimeMs < statSync(lock).mtimeMs) {
  console.log("Installing the locked packages (npm ci) ...");
  const { status, error } = spawnSync("npm ci", { cwd: root, stdio: "inherit", shell: true });
  if (error) console.error(`npm could not be started: ${error.message}`);
  process.exit(status ?? 2);
}

// The example plans, and the built command line run on them.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import path from "node:path";
import { ROOT } from "./steps.mjs";

/** The comparison that the README shows: a plan, the change made to it, and the overlay of both. */
export const COMPARED = {
  plan: "examples/niche-wall.tileplan",
  change: ["joint 2", "joint 3"],
  picture: "examples/niche-wall.compared.svg",
};

/** The plan that the README shows as a room unfolded, and its picture. */
export const UNFOLDED = {
  plan: "examples/room.tileplan",
  picture: "examples/room.unfolded.svg",
};

/** The plans of examples/, as paths from the top of the repository. */
export function examplePlans() {
  return readdirSync(path.join(ROOT, "examples"))
    .filter((name) => name.endsWith(".tileplan"))
    .sort()
    .map((name) => `examples/${name}`);
}

/** Runs the built command; what it writes, and whether it could run (exit 0 or 1). */
export function gaugelath(...words) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [path.join(ROOT, "dist", "cli.cjs"), ...words],
    { cwd: ROOT, encoding: "utf8", maxBuffer: 1 << 28 },
  );
  if (status !== 0 && status !== 1) throw new Error(`gaugelath ${words.join(" ")}\n${stderr}`);
  return { out: stdout, err: stderr };
}

/** The solved plan of a file, as the command gives it. */
export function solved(file) {
  return JSON.parse(gaugelath("solve", file, "--format", "json").out);
}

// Installs VS Code's own server for the editor's tests, out of the npm registry alone, into
// .vscode-test/server: the package `code-server`, and the Node that it builds and runs on. With
// --system, also the Debian packages that this needs, where they are missing and root may install them.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { findBrowser } from "./browser.mjs";
import { ROOT } from "../steps.mjs";

const FOLDER = path.join(ROOT, ".vscode-test", "server");
const WANTED = { node: "24", "code-server": "4.139.1" };
/** Written when an install is whole; a broken one is begun again. */
const DONE = path.join(FOLDER, "installed.json");
/** The libraries that code-server's native modules are built against (code-server's docs/npm.md). */
const LIBRARIES = {
  krb5: "libkrb5-dev",
  x11: "libx11-dev",
  xkbfile: "libxkbfile-dev",
  "libsecret-1": "libsecret-1-dev",
};
const BUILD_TOOLS = ["g++", "make", "python3", "pkg-config"];

/** The server's program and the Node to run it on. */
export const SERVER = path.join(FOLDER, "node_modules/code-server/lib/vscode/out/server-main.js");
export const SERVER_NODE = path.join(FOLDER, "node_modules/.bin/node");

export function isServerInstalled() {
  return existsSync(DONE) && readFileSync(DONE, "utf8") === JSON.stringify(WANTED);
}

/** What this machine lacks to build the server, as Debian packages. */
export function missingPackages() {
  const tools = BUILD_TOOLS.filter((tool) => !runs(tool, "--version"));
  const libraries = Object.keys(LIBRARIES)
    .filter((name) => !runs("pkg-config", "--exists", name))
    .map((name) => LIBRARIES[name]);
  const browser = findBrowser() ? [] : ["chromium"];
  return [...tools, ...libraries, ...browser];
}

/** Installs the server; true when it is whole. */
export function installServer() {
  if (isServerInstalled()) return true;
  console.log("Installing VS Code's server for the editor tests (a few minutes, 800 MB) ...");
  rmSync(FOLDER, { recursive: true, force: true });
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(path.join(FOLDER, "package.json"), JSON.stringify({ private: true }));
  // Each step runs on the Node that the one before brought: the native modules must fit the Node that
  // the server runs on.
  const whole = Object.entries(WANTED).every(([name, version]) => install(`${name}@${version}`));
  if (whole) writeFileSync(DONE, JSON.stringify(WANTED));
  return whole;
}

function install(wanted) {
  const env = {
    ...process.env,
    PATH: path.dirname(SERVER_NODE) + path.delimiter + process.env.PATH,
    // Newer versions of npm ask for leave before a package runs its install scripts. This folder holds
    // these two packages alone; they build their native modules in nested installs, which a list of
    // names in one package.json would not reach.
    npm_config_dangerously_allow_all_scripts: "true",
  };
  const { status } = spawnSync(
    "npm",
    ["install", "--no-audit", "--no-fund", "--loglevel=error", wanted],
    {
      cwd: FOLDER,
      env,
      stdio: "inherit",
    },
  );
  return status === 0;
}

/** Installs what is missing with apt-get; true when nothing is missing after it. */
function installSystemPackages() {
  const missing = missingPackages();
  if (missing.length === 0) return true;
  if (process.getuid?.() !== 0 || !runs("apt-get", "--version")) {
    console.error(`The editor tests need: ${missing.join(" ")} (Debian's names)`);
    return false;
  }
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const args of [
    ["update", "-q"],
    ["install", "-qy", "--no-install-recommends", ...missing],
  ]) {
    spawnSync("apt-get", args, { stdio: "inherit", env });
  }
  return missingPackages().length === 0;
}

function runs(...[command, ...args]) {
  return spawnSync(command, args, { stdio: "ignore" }).status === 0;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const ready = !process.argv.includes("--system") || installSystemPackages();
  process.exitCode = ready && installServer() ? 0 : 1;
}

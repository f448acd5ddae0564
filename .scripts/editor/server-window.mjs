// A window of VS Code's own server in Chromium: the editor's tests run in its extension host.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { launchBrowser } from "./browser.mjs";
import { SERVER, SERVER_NODE } from "./install.mjs";
import { freePort } from "./free-port.mjs";
import { USER_SETTINGS } from "./settings.mjs";

/** How long the server may take to listen, in milliseconds. */
const START = 60_000;

/** Keeps code-server from asking its gallery of extensions. */
const NO_GALLERY = { EXTENSIONS_GALLERY: "{}" };

/**
 * Opens a window on a workspace. `extension` and `tests` are paths, or null where the window is a
 * user's; `trusted` false keeps the workspace restricted; `web` runs extensions in the browser.
 */
export async function openServerWindow(options) {
  const port = await freePort();
  const server = await startServer(port, options);
  const browser = await launchBrowser();
  const context = await browser.newContext({ viewport: { width: 1400, height: 900 } });
  const page = await context.newPage();
  page.on("console", (message) => {
    if (process.env.GAUGELATH_EDITOR_LOG) console.log(`  [page] ${message.text()}`);
  });
  await page.goto(addressOf(port, options));
  const ended = once(server, "exit").then(() => {
    throw new Error("VS Code's server ended before the tests reported");
  });
  // Closing the window ends the server, too.
  ended.catch(() => null);
  return {
    page,
    ended,
    close: async () => {
      await browser.close();
      server.kill();
      await ended.catch(() => null);
    },
  };
}

/** Installs a packaged extension into the folder where the server looks for extensions. */
export async function installPackage(file, extensions) {
  const args = [SERVER, "--install-extension", file, "--extensions-dir", extensions, "--force"];
  const child = spawn(SERVER_NODE, [...args, "--accept-server-license-terms"], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (part) => (said += part));
  const [code] = await once(child, "exit");
  if (code !== 0) throw new Error(`The package could not be installed: ${said}`);
}

async function startServer(port, { folder, extensions, trusted }) {
  const data = path.join(folder, "data");
  for (const place of ["User", "Machine"]) {
    mkdirSync(path.join(data, place), { recursive: true });
    writeFileSync(path.join(data, place, "settings.json"), JSON.stringify(USER_SETTINGS));
  }
  const flags = ["--accept-server-license-terms", "--enable-smoke-test-driver"];
  const child = spawn(
    SERVER_NODE,
    [
      ...[SERVER, "--host", "127.0.0.1", "--port", String(port), "--without-connection-token"],
      ...[...flags, ...(trusted ? ["--disable-workspace-trust"] : [])],
      ...["--telemetry-level", "off", "--server-data-dir", data, "--user-data-dir", data],
      ...["--extensions-dir", extensions],
    ],
    { stdio: ["ignore", "pipe", "pipe"], env: { ...process.env, ...NO_GALLERY } },
  );
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (part) => (said += part));
  await waitForPort(port, () => {
    if (child.exitCode !== null) throw new Error(`VS Code's server ended: ${said}`);
  });
  return child;
}

function addressOf(port, { workspace, extension, tests, web }) {
  const remote = (file) => `vscode-remote://127.0.0.1:${port}${pathToFileURL(file).pathname}`;
  const payload = [["skipWelcome", "true"]];
  if (extension) payload.push(["extensionDevelopmentPath", remote(extension)]);
  if (tests) payload.push(["extensionTestsPath", remote(tests)]);
  if (web) payload.push(["extensionDevelopmentKind", "web"]);
  const query = new URLSearchParams({ folder: workspace, payload: JSON.stringify(payload) });
  return `http://127.0.0.1:${port}/?${query}`;
}

async function waitForPort(port, check) {
  const until = Date.now() + START;
  for (;;) {
    check();
    const answer = await fetch(`http://127.0.0.1:${port}/version`).catch(() => null);
    if (answer?.ok) return;
    if (Date.now() > until) throw new Error("VS Code's server did not start");
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

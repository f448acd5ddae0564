// A window of VS Code's own server in Chromium: the editor's tests run in its extension host.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { launchBrowser } from "./browser.mjs";
import { startFileServer } from "./file-server.mjs";
import { SERVER, SERVER_NODE } from "./install.mjs";
import { freePort } from "./free-port.mjs";
import { userSettings } from "./settings.mjs";

/** How long the server may take to listen, in milliseconds. */
const START = 60_000;

/** Keeps code-server from asking its gallery of extensions. */
const NO_GALLERY = { EXTENSIONS_GALLERY: "{}" };

/**
 * Opens a window on a workspace, with the tests in the extension host. `trusted` false keeps the
 * workspace restricted; `web` runs the extension in the browser.
 */
export async function openServerWindow(options) {
  const port = await freePort();
  const server = await startServer(port, options);
  const browser = await launchBrowser();
  const context = await browser.newContext({
    viewport: { width: 1400, height: 900 },
    // The editor's page lets nothing in from another port, where this extension comes from.
    bypassCSP: options.web,
  });
  // A page that the tests had a hand in may still talk to the server it came from.
  await context.grantPermissions(["local-network-access"]);
  const page = await context.newPage();
  page.on("console", (message) => {
    if (process.env.GAUGELATH_EDITOR_LOG) console.log(`  [page] ${message.text()}`);
  });
  const files = options.web ? await developInBrowser(page, options) : null;
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
      files?.close();
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

async function startServer(port, { folder, extensions, trusted, git }) {
  const data = path.join(folder, "data");
  for (const place of ["User", "Machine"]) {
    mkdirSync(path.join(data, place), { recursive: true });
    writeFileSync(path.join(data, place, "settings.json"), JSON.stringify(userSettings(git)));
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
  if (!web) payload.push(["extensionDevelopmentPath", remote(extension)]);
  if (!web) payload.push(["extensionTestsPath", remote(tests)]);
  const query = new URLSearchParams({ folder: workspace, payload: JSON.stringify(payload) });
  return `http://127.0.0.1:${port}/?${query}`;
}

/**
 * Has the page's own options name an extension that comes over HTTP: such a one runs in the browser.
 * The tests must stand inside of it, to run in the same extension host.
 */
async function developInBrowser(page, { extension, tests }) {
  const files = await startFileServer({
    "/extension/tests": path.dirname(tests),
    "/extension": extension,
  });
  const uriOf = (place) => ({ scheme: "http", authority: files.host, path: place });
  await page.route(
    ({ pathname }) => pathname === "/",
    async (route) => {
      const response = await route.fetch();
      const body = (await response.text()).replace(/(data-settings=")(\{.*?\})(")/, (...parts) => {
        const options = JSON.parse(parts[2].replaceAll("&quot;", '"'));
        options.developmentOptions = {
          ...options.developmentOptions,
          extensions: [uriOf("/extension")],
          extensionTestsPath: uriOf(`/extension/tests/${path.basename(tests)}`),
        };
        return parts[1] + JSON.stringify(options).replaceAll('"', "&quot;") + parts[3];
      });
      await route.fulfill({ response, body });
    },
  );
  return files;
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

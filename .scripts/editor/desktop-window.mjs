// A window of a VS Code that @vscode/test-electron downloads, for machines that can reach it.
import { spawnSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import {
  downloadAndUnzipVSCode,
  resolveCliArgsFromVSCodeExecutablePath,
  runTests,
} from "@vscode/test-electron";
import { chromium } from "playwright-core";
import { freePort } from "./free-port.mjs";
import { userSettings } from "./settings.mjs";

/** How long the window may take to show, in milliseconds. */
const START = 60_000;

/** The program of a downloaded VS Code, or the reason why it can't be had. */
export async function downloadDesktop() {
  if (process.platform === "linux" && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) {
    return {
      executable: null,
      reason: "VS Code needs a display (DISPLAY is not set; try xvfb-run)",
    };
  }
  try {
    return { executable: await downloadAndUnzipVSCode("stable"), reason: null };
  } catch (error) {
    return { executable: null, reason: `VS Code could not be downloaded (${error.message})` };
  }
}

/** Opens a window; options as for the server's. The page is reached over its debugging port. */
export async function openDesktopWindow(executable, options) {
  const data = path.join(options.folder, "data");
  mkdirSync(path.join(data, "User"), { recursive: true });
  writeFileSync(
    path.join(data, "User", "settings.json"),
    JSON.stringify(userSettings(options.git)),
  );
  const places = ["--user-data-dir", data, "--extensions-dir", options.extensions];
  if (options.install) installPackage(executable, options.install, places);
  const port = await freePort();
  const ended = runTests({
    vscodeExecutablePath: executable,
    extensionDevelopmentPath: options.extension,
    extensionTestsPath: options.tests,
    launchArgs: [
      ...[options.workspace, ...places, `--remote-debugging-port=${port}`],
      ...["--skip-welcome", "--skip-release-notes", "--disable-telemetry", "--no-sandbox"],
      ...(options.trusted ? ["--disable-workspace-trust"] : []),
    ],
  }).then(() => {
    throw new Error("VS Code ended before the tests reported");
  });
  // A failing test ends the program too; its report tells more, so this may not go unhandled.
  ended.catch(() => null);
  const browser = await connect(port);
  const page = browser.contexts()[0].pages()[0];
  return { page, ended, close: () => browser.close() };
}

function installPackage(executable, file, places) {
  const [cli, ...args] = resolveCliArgsFromVSCodeExecutablePath(executable);
  const { status } = spawnSync(cli, [...args, ...places, "--install-extension", file], {
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (status !== 0) throw new Error("The package could not be installed");
}

async function connect(port) {
  const until = Date.now() + START;
  for (;;) {
    try {
      const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
      if (browser.contexts()[0]?.pages().length > 0) return browser;
      await browser.close();
    } catch (error) {
      if (Date.now() > until) throw error;
    }
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
}

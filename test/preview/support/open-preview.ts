/// <reference lib="dom" />
import { build } from "esbuild";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Browser, Page } from "playwright-core";
import { findBrowser, launchBrowser } from "../../../.scripts/editor/browser.mjs";
import type { ToComparison } from "../../../src/preview/comparison-messages.js";
import type { FromPreview, ToPreview } from "../../../src/preview/messages.js";
import type { ToSheet } from "../../../src/preview/sheet-messages.js";
import type { SpotQuestion, SpotReading } from "../../../src/service/index.js";
import { THEMES, type ThemeName } from "./themes.js";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const ADDRESS = "http://preview.test/";
const NONCE = "testnonce";

/** As the extension sets it (src/extension/preview-page.ts). */
const POLICY = [
  "default-src 'none'",
  `script-src 'nonce-${NONCE}'`,
  `style-src ${ADDRESS}`,
  "img-src data:",
].join("; ");

let browser: Promise<Browser> | null = null;
let script: Promise<string> | null = null;

/** Ends the browser that all previews share. */
export async function closeBrowser(): Promise<void> {
  await (await browser)?.close();
  browser = null;
}

// Once, after the last test of all files; the benchmark ends it by itself.
if (typeof after === "function") after(closeBrowser);

/** Leaves a suite out, counted as skipped, where there is no Chromium. */
export function needsBrowser(suite: Mocha.Suite): void {
  if (findBrowser() !== null) return;
  suite.title += " (skipped: no Chromium is installed)";
  suite.beforeAll(function () {
    this.skip();
  });
}

export interface OpenOptions {
  readonly theme?: ThemeName;
  readonly width?: number;
  readonly height?: number;
  readonly lessMotion?: boolean;
  /** What the page shows; a preview unless told. */
  readonly shows?: "preview" | "comparison" | "sheet";
  /** What stands at a spot; nothing, unless told. */
  readonly reading?: (question: SpotQuestion) => SpotReading | null;
}

/** The preview in a real page, and the host at its other end. */
export interface OpenPreview {
  readonly page: Page;
  readonly post: (message: ToPreview | ToComparison | ToSheet) => Promise<void>;
  /** All that the preview sent, in order. */
  readonly sent: () => readonly FromPreview[];
  /** Waits until it sent a message of this type, after the first `past` messages. */
  readonly waitFor: <T extends FromPreview["type"]>(
    type: T,
    past?: number,
  ) => Promise<Extract<FromPreview, { type: T }>>;
  /** Errors and refusals of the content security policy that the page told. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

export async function openPreview(options: OpenOptions = {}): Promise<OpenPreview> {
  const {
    theme = "light",
    width = 1000,
    height = 760,
    lessMotion = true,
    shows = "preview",
  } = options;
  const context = await (
    await (browser ??= launchBrowser())
  ).newContext({
    viewport: { width, height },
    reducedMotion: lessMotion ? "reduce" : "no-preference",
  });
  const page = await context.newPage();
  const sent: FromPreview[] = [];
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  const post = (message: ToPreview | ToComparison | ToSheet): Promise<void> =>
    page.evaluate((data) => window.postMessage(data), message);
  await page.exposeFunction("gaugelathSent", async (message: FromPreview) => {
    sent.push(message);
    if (message.type !== "spot") return;
    const reading = options.reading?.(message.question) ?? null;
    await post({ type: "spot", id: message.id, reading });
  });
  await page.addInitScript(ACT_AS_EDITOR);
  const files = await pageFiles(theme, shows);
  await page.route(`${ADDRESS}**`, (route) => {
    const file = files[new URL(route.request().url()).pathname];
    return file ? route.fulfill(file) : route.fulfill({ status: 404 });
  });
  await page.goto(ADDRESS);
  const waitFor: OpenPreview["waitFor"] = async (type, past = 0) => {
    const end = Date.now() + 5000;
    for (;;) {
      const found = sent.slice(past).find((message) => message.type === type);
      if (found) return found as Extract<FromPreview, { type: typeof type }>;
      if (Date.now() > end) {
        throw new Error(`The preview never sent "${type}". ${complaints.join("\n")}`);
      }
      await page.waitForTimeout(5);
    }
  };
  await waitFor("ready");
  return { page, post, sent: () => sent, waitFor, complaints, close: () => context.close() };
}

/**
 * Runs in the page: what an editor gives a webview's script. Its state outlives a reload. As text,
 * since the loader of the tests would give its functions names by a helper that the page lacks.
 */
const ACT_AS_EDITOR = `
  window.acquireVsCodeApi = () => ({
    postMessage: (message) => {
      if (message.type === "painted") window.dispatchEvent(new Event("gaugelath-painted"));
      window.gaugelathSent(message);
    },
    getState: () => JSON.parse(sessionStorage.getItem("state") ?? "null"),
    setState: (state) => sessionStorage.setItem("state", JSON.stringify(state)),
  });`;

interface PageFile {
  readonly contentType: string;
  readonly body: string;
}

async function pageFiles(
  theme: ThemeName,
  shows: string,
): Promise<Readonly<Record<string, PageFile>>> {
  const { class: name, colours } = THEMES[theme];
  const rules = Object.entries(colours).map(([key, value]) => `${key}: ${value};`);
  return {
    "/": { contentType: "text/html", body: pageText(name, shows) },
    "/preview.js": { contentType: "text/javascript", body: await (script ??= bundle()) },
    "/preview.css": {
      contentType: "text/css",
      body: `${readFileSync(`${root}media/preview.css`, "utf8")}\n:root { ${rules.join(" ")} }`,
    },
  };
}

function pageText(theme: string, shows: string): string {
  return `<!doctype html>
<html lang="en" data-gaugelath="${shows}">
  <head>
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${POLICY}">
    <link rel="stylesheet" href="${ADDRESS}preview.css">
    <title>Plan preview</title>
  </head>
  <body class="${theme}">
    <script nonce="${NONCE}" src="${ADDRESS}preview.js"></script>
  </body>
</html>`;
}

async function bundle(file = "src/preview/main.ts", globalName = "preview"): Promise<string> {
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: [file],
    bundle: true,
    minify: true,
    write: false,
    platform: "browser",
    format: "iife",
    globalName,
    target: "chrome114",
  });
  return outputFiles[0]!.text;
}

/** A blank page with what a file of src/ exports as the global `subject`. */
export async function openModule(file: string): Promise<Page> {
  const context = await (await (browser ??= launchBrowser())).newContext();
  const page = await context.newPage();
  await page.setContent("<!doctype html><title>test</title><body></body>");
  await page.addScriptTag({ content: await bundle(file, "subject") });
  return page;
}

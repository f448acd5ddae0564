// The Chromium that shows the editor.
import { existsSync } from "node:fs";
import { chromium } from "playwright-core";

const PLACES = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Where a Chromium is installed (CHROMIUM names one), or null. */
export function findBrowser() {
  const places = [process.env.CHROMIUM, ...PLACES, chromium.executablePath()];
  return places.find((place) => place && existsSync(place)) ?? null;
}

export function launchBrowser() {
  return chromium.launch({ executablePath: findBrowser(), args: FLAGS });
}

import type { Browser } from "playwright-core";

export function findBrowser(): string | null;
export function launchBrowser(): Promise<Browser>;

/// <reference lib="dom" />
import { ComparisonPage } from "./comparison/comparison-page.js";
import type { EditorPage } from "./host.js";
import { Preview } from "./preview.js";

declare function acquireVsCodeApi(): EditorPage;

// The page says what it shows: see the extension's webview-page.ts.
if (document.documentElement.dataset.gaugelath === "comparison") {
  new ComparisonPage(document.body, acquireVsCodeApi());
} else {
  new Preview(document.body, acquireVsCodeApi());
}

/// <reference lib="dom" />
import { ComparisonPage } from "./comparison/comparison-page.js";
import type { EditorPage } from "./host.js";
import { Preview } from "./preview.js";
import { SheetPage } from "./sheet/sheet-page.js";

declare function acquireVsCodeApi(): EditorPage;

// The page says what it shows: see the extension's webview-page.ts.
switch (document.documentElement.dataset.gaugelath) {
  case "comparison":
    new ComparisonPage(document.body, acquireVsCodeApi());
    break;
  case "sheet":
    new SheetPage(document.body, acquireVsCodeApi());
    break;
  default:
    new Preview(document.body, acquireVsCodeApi());
}

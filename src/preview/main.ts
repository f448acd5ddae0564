/// <reference lib="dom" />
import type { EditorPage } from "./host.js";
import { Preview } from "./preview.js";

declare function acquireVsCodeApi(): EditorPage;

new Preview(document.body, acquireVsCodeApi());

/// <reference lib="dom" />
import { isPreviewState, isToPreview } from "./messages.js";
import type { FromPreview, PreviewState, ToPreview } from "./messages.js";

/** What a webview's page is given by the editor. */
export interface EditorPage {
  postMessage(message: unknown): void;
  getState(): unknown;
  setState(state: unknown): void;
}

/** The extension, as the preview sees it. */
export interface Host {
  readonly send: (message: FromPreview) => void;
  /** What was kept over a reload of the window, or null. */
  readonly recall: () => PreviewState | null;
  readonly keep: (state: PreviewState) => void;
}

/** Listens to the extension; what is no message of ours is passed over. */
export function connectHost(editor: EditorPage, listen: (message: ToPreview) => void): Host {
  window.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
    if (isToPreview(data)) listen(data);
  });
  return {
    send: (message) => editor.postMessage(message),
    recall: () => {
      const state = editor.getState();
      return isPreviewState(state) ? state : null;
    },
    keep: (state) => editor.setState(state),
  };
}

import * as vscode from "vscode";
import {
  type ExportFormat,
  type FromPreview,
  isFromPreview,
  type ToPreview,
} from "../preview/messages.js";
import type { Cursor } from "../service/index.js";
import { planName } from "./plan-name.js";
import type { PlanServer } from "./plan-server.js";
import { previewPage, previewRoots } from "./preview-page.js";
import { revealPlace } from "./reveal-place.js";
import { savePicture } from "./save-picture.js";
import { type PlanNews, ShownPlan } from "./shown-plan.js";

/** What a preview tells those that hold it. */
export interface PanelEvents {
  readonly closed: (panel: PreviewPanel) => void;
  readonly unpinned: (panel: PreviewPanel) => void;
}

/**
 * One preview: a webview, the plan that it shows and what was sent to it. A hidden webview has no
 * page; when it shows again, its page begins anew and is sent all of it once more.
 */
export class PreviewPanel implements vscode.Disposable {
  static readonly type = "gaugelath.preview";

  #plan: ShownPlan;
  #cursor: Cursor | null = null;
  /** Whether the page listens. */
  #ready = false;
  #painted = false;
  /** An export that waits for the picture. */
  #export: ExportFormat | null = null;

  constructor(
    private readonly panel: vscode.WebviewPanel,
    extensionUri: vscode.Uri,
    private readonly server: PlanServer,
    uri: vscode.Uri,
    public pinned: boolean,
    private readonly events: PanelEvents,
  ) {
    const { webview } = panel;
    webview.options = { enableScripts: true, localResourceRoots: previewRoots(extensionUri) };
    webview.onDidReceiveMessage((message: unknown) => {
      if (isFromPreview(message)) this.#listen(message);
    });
    panel.onDidDispose(() => {
      this.#plan.dispose();
      events.closed(this);
    });
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#ready = false;
    });
    const icon = (theme: string): vscode.Uri =>
      vscode.Uri.joinPath(extensionUri, "media", `file-${theme}.svg`);
    panel.iconPath = { light: icon("light"), dark: icon("dark") };
    this.#plan = this.#begin(uri);
    webview.html = previewPage(webview, extensionUri);
  }

  get uri(): vscode.Uri {
    return this.#plan.uri;
  }

  get active(): boolean {
    return this.panel.active;
  }

  /** Shows another plan. */
  show(uri: vscode.Uri): void {
    if (uri.toString() === this.uri.toString()) return;
    this.#plan.dispose();
    this.#plan = this.#begin(uri);
    this.#sendPlan();
  }

  reveal(preserveFocus: boolean): void {
    this.panel.reveal(undefined, preserveFocus);
  }

  /** Marks where the text's cursor stands. */
  point(cursor: Cursor | null): void {
    this.#cursor = cursor;
    this.#send({ type: "cursor", cursor });
  }

  /** Saves what is seen, as soon as it is. */
  export(format: ExportFormat): void {
    if (this.#ready && this.#painted) this.#send({ type: "export", format });
    else this.#export = format;
  }

  dispose(): void {
    this.panel.dispose();
  }

  #begin(uri: vscode.Uri): ShownPlan {
    this.#painted = false;
    const plan = new ShownPlan(uri, this.server, (news) => this.#sendNews(news));
    this.#title(uri);
    return plan;
  }

  #title(uri: vscode.Uri): void {
    this.panel.title = `${this.pinned ? "Pinned" : "Preview"}: ${planName(uri)}`;
  }

  #listen(message: FromPreview): void {
    switch (message.type) {
      case "ready":
        this.#ready = true;
        this.#painted = false;
        this.#sendPlan();
        return;
      case "painted":
        if (message.uri === this.uri.toString()) this.#wasPainted();
        return;
      case "pin":
        this.pinned = message.pinned;
        this.#title(this.uri);
        if (!message.pinned) this.events.unpinned(this);
        return;
      case "select":
        revealPlace(vscode.Uri.parse(message.uri), message.range, this.panel.viewColumn).then(
          undefined,
          showError,
        );
        return;
      case "spot":
        void this.server
          .spot(message.question)
          .then((reading) => this.#send({ type: "spot", id: message.id, reading }));
        return;
      case "exported":
        savePicture(this.uri, message.format, message.data).then(undefined, showError);
        return;
      case "fault":
        showError(message.message);
        return;
    }
  }

  #wasPainted(): void {
    this.#painted = true;
    const format = this.#export;
    this.#export = null;
    if (format) this.#send({ type: "export", format });
  }

  #sendPlan(): void {
    const { uri } = this;
    this.#send({
      type: "plan",
      uri: uri.toString(),
      name: planName(uri),
      pinned: this.pinned,
    });
    this.#sendNews(this.#plan.news);
    this.#send({ type: "cursor", cursor: this.#cursor });
  }

  #sendNews({ picture, gone }: PlanNews): void {
    if (picture) this.#send({ type: "picture", picture });
    if (gone !== null) this.#send({ type: "gone", uri: this.uri.toString(), message: gone });
  }

  #send(message: ToPreview): void {
    if (this.#ready) void this.panel.webview.postMessage(message);
  }
}

function showError(reason: unknown): void {
  const message = reason instanceof Error ? reason.message : String(reason);
  void vscode.window.showErrorMessage(`Gaugelath: ${message}`);
}

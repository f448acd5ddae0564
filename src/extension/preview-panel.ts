import * as vscode from "vscode";
import {
  type ExportFormat,
  type FromPreview,
  isFromPreview,
  type ToPreview,
} from "../preview/messages.js";
import type { Cursor } from "../service/index.js";
import { OptionDesk } from "./option-desk.js";
import { planName } from "./plan-name.js";
import type { LastCommits } from "./last-commits.js";
import type { PlanServer } from "./plan-server.js";
import { revealPlace } from "./reveal-place.js";
import { savePicture } from "./save-picture.js";
import { type PlanNews, ShownPlan } from "./shown-plan.js";
import { pageRoots, planIcon, webviewPage } from "./webview-page.js";

/** What all previews are made with. */
export interface PreviewSetting {
  readonly extensionUri: vscode.Uri;
  readonly server: PlanServer;
  readonly lastCommits: LastCommits;
}

/** How a preview begins. */
export interface PreviewStart {
  readonly uri: vscode.Uri;
  readonly pinned: boolean;
  /** Whether changed pieces are marked. */
  readonly marked: boolean;
}

/** What a preview tells those that hold it. */
export interface PanelEvents {
  readonly closed: (panel: PreviewPanel) => void;
  readonly unpinned: (panel: PreviewPanel) => void;
  /** The whole comparison is wanted. */
  readonly compare: (uri: vscode.Uri) => void;
}

const NOTHING_SENT: PlanNews = { picture: null, changes: null, gone: null };

/**
 * One preview: a webview, the plan that it shows and what was sent to it. A hidden webview has no
 * page; when it shows again, its page begins anew and is sent all of it once more.
 */
export class PreviewPanel implements vscode.Disposable {
  static readonly type = "gaugelath.preview";

  pinned: boolean;
  #marked: boolean;
  /** Whether the room is shown unfolded: its page says so. */
  #unfolded = false;
  readonly #options: OptionDesk;
  #plan: ShownPlan;
  /** What the page has of the plan. */
  #sent: PlanNews = NOTHING_SENT;
  #cursor: Cursor | null = null;
  /** Whether the page listens. */
  #ready = false;
  #painted = false;
  /** An export that waits for the picture. */
  #export: ExportFormat | null = null;

  constructor(
    private readonly panel: vscode.WebviewPanel,
    private readonly setting: PreviewSetting,
    { uri, pinned, marked }: PreviewStart,
    private readonly events: PanelEvents,
  ) {
    const { webview } = panel;
    const { extensionUri } = setting;
    this.pinned = pinned;
    this.#marked = marked;
    this.#options = new OptionDesk(setting.server);
    webview.options = { enableScripts: true, localResourceRoots: pageRoots(extensionUri) };
    webview.onDidReceiveMessage((message: unknown) => {
      if (isFromPreview(message)) this.#listen(message);
    });
    panel.onDidDispose(() => {
      this.#plan.dispose();
      this.#options.dispose();
      events.closed(this);
    });
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#ready = false;
    });
    panel.iconPath = planIcon(extensionUri);
    this.#plan = this.#begin(uri);
    webview.html = webviewPage(webview, extensionUri, "preview");
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
    const { server, lastCommits } = this.setting;
    const [marked, unfolded] = [this.#marked, this.#unfolded];
    const shownWith = { server, lastCommits, marked, unfolded };
    const plan = new ShownPlan(uri, shownWith, (news) => this.#sendNews(news));
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
      case "mark":
        this.#marked = message.marked;
        this.#plan.marked = message.marked;
        return;
      case "room":
        this.#unfolded = message.shown;
        this.#plan.unfolded = message.shown;
        return;
      case "options":
        if (message.uri === this.uri.toString()) void this.#tellOptions(message.wall);
        return;
      case "take":
        this.#options.take(this.uri, message).then(undefined, showError);
        return;
      case "compare":
        this.events.compare(this.uri);
        return;
      case "select":
        revealPlace(vscode.Uri.parse(message.uri), message.range, this.panel.viewColumn).then(
          undefined,
          showError,
        );
        return;
      case "spot":
        void this.setting.server
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

  async #tellOptions(wall: string | null): Promise<void> {
    const options = await this.#options.ask(this.uri, wall);
    if (options) this.#send({ type: "options", options });
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
      marked: this.#marked,
    });
    this.#sent = NOTHING_SENT;
    this.#sendNews(this.#plan.news);
    this.#send({ type: "cursor", cursor: this.#cursor });
  }

  /** What the page hasn't yet: a picture is much to send twice. */
  #sendNews(news: PlanNews): void {
    const { picture, changes, gone } = news;
    const uri = this.uri.toString();
    const before = this.#sent;
    this.#sent = news;
    if (picture && picture !== before.picture) this.#send({ type: "picture", picture });
    if (changes !== before.changes) this.#send({ type: "changes", uri, told: changes });
    if (gone !== null) this.#send({ type: "gone", uri, message: gone });
  }

  #send(message: ToPreview): void {
    if (this.#ready) void this.panel.webview.postMessage(message);
  }
}

function showError(reason: unknown): void {
  const message = reason instanceof Error ? reason.message : String(reason);
  void vscode.window.showErrorMessage(`Gaugelath: ${message}`);
}

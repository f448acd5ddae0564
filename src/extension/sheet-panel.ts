import * as vscode from "vscode";
import { type FromSheet, isFromSheet, type ToSheet } from "../preview/sheet-messages.js";
import { OpenPlan } from "./open-plan.js";
import { planName } from "./plan-name.js";
import type { PlanServer } from "./plan-server.js";
import { saveSheet } from "./save-sheet.js";
import { pageRoots, planIcon, webviewPage } from "./webview-page.js";

/** How long a text rests before its sheet is made anew, in milliseconds: nobody types to a sheet. */
const REST = 400;

/** One setter's sheet: a webview, and the plan whose sheet it shows as it is written now. */
export class SheetPanel implements vscode.Disposable {
  static readonly type = "gaugelath.sheet";

  /** Whether the page listens. */
  #ready = false;
  /** Counts what was asked for, so that an answer that was overtaken is dropped. */
  #asked = 0;
  #rest: ReturnType<typeof setTimeout> | undefined;
  readonly #subscriptions: readonly { dispose(): unknown }[];

  constructor(
    private readonly panel: vscode.WebviewPanel,
    extensionUri: vscode.Uri,
    private readonly server: PlanServer,
    readonly uri: vscode.Uri,
    closed: (panel: SheetPanel) => void,
  ) {
    const { webview } = panel;
    webview.options = { enableScripts: true, localResourceRoots: pageRoots(extensionUri) };
    this.#subscriptions = [
      new OpenPlan(uri, {
        opened: () => this.#askSoon(),
        left: (why) => this.#send({ type: "missing", why: `${why}.` }),
      }),
      vscode.workspace.onDidChangeTextDocument(({ document }) => {
        // A list of stock that it uses may have changed, too.
        if (document.languageId === "tileplan") this.#askSoon();
      }),
      server.onRunning(() => this.#askSoon()),
      webview.onDidReceiveMessage((message: unknown) => {
        if (isFromSheet(message)) this.#listen(message);
      }),
    ];
    panel.onDidDispose(() => {
      clearTimeout(this.#rest);
      for (const subscription of this.#subscriptions) subscription.dispose();
      closed(this);
    });
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#ready = false;
    });
    panel.title = `Sheet: ${planName(uri)}`;
    panel.iconPath = planIcon(extensionUri);
    webview.html = webviewPage(webview, extensionUri, "sheet");
  }

  get active(): boolean {
    return this.panel.active;
  }

  reveal(): void {
    this.panel.reveal();
  }

  /** Asks where the sheet goes, and writes it there. */
  async save(): Promise<vscode.Uri[]> {
    return saveSheet(this.uri, (format) =>
      this.server.printSheet({ uri: this.uri.toString(), format }),
    );
  }

  dispose(): void {
    this.panel.dispose();
  }

  #listen(message: FromSheet): void {
    switch (message.type) {
      case "ready":
        this.#ready = true;
        this.#send({ type: "plan", uri: this.uri.toString(), name: planName(this.uri) });
        void this.#ask();
        return;
      case "save":
        this.save().then(undefined, showError);
        return;
      case "painted":
        return;
    }
  }

  #askSoon(): void {
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => void this.#ask(), REST);
  }

  /** A page that is hidden asks when it shows again. */
  async #ask(): Promise<void> {
    if (!this.#ready) return;
    const asked = ++this.#asked;
    const sheet = await this.server.sheet({ uri: this.uri.toString() });
    if (sheet && asked === this.#asked) this.#send({ type: "paper", paper: sheet.paper });
  }

  #send(message: ToSheet): void {
    if (this.#ready) void this.panel.webview.postMessage(message);
  }
}

function showError(reason: unknown): void {
  const message = reason instanceof Error ? reason.message : String(reason);
  void vscode.window.showErrorMessage(`Gaugelath: ${message}`);
}

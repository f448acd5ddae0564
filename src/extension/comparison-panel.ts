import * as vscode from "vscode";
import {
  type Against,
  type FromComparison,
  isFromComparison,
  type ToComparison,
} from "../preview/comparison-messages.js";
import type { ComparisonLook, PlanComparison } from "../service/index.js";
import { type GitHistory, LAST } from "./git-history.js";
import type { LastCommits } from "./last-commits.js";
import { type Missing, missing, type OldVersion } from "./old-version.js";
import { isMissing } from "./open-git.js";
import { OpenPlan } from "./open-plan.js";
import { planName } from "./plan-name.js";
import type { ComparisonWatch, PlanServer } from "./plan-server.js";
import { pageRoots, planIcon, webviewPage } from "./webview-page.js";

/** What all comparisons are made with. */
export interface ComparisonSetting {
  readonly extensionUri: vscode.Uri;
  readonly server: PlanServer;
  readonly history: GitHistory;
  readonly lastCommits: LastCommits;
}

/** How a comparison begins. */
export interface ComparisonStart {
  readonly uri: vscode.Uri;
  readonly against: Against;
  readonly look: ComparisonLook;
}

/** One comparison: a webview, the plan as it is written now, and what it is compared with. */
export class ComparisonPanel implements vscode.Disposable {
  static readonly type = "gaugelath.comparison";

  readonly uri: vscode.Uri;
  #against: Against;
  #look: ComparisonLook;
  #version: OldVersion | Missing | null = null;
  #comparison: PlanComparison | null = null;
  /** Why the plan itself can't be followed any more. */
  #gone: string | null = null;
  /** Whether the page listens. */
  #ready = false;
  /** Counts what was looked for, so that an answer that was overtaken is dropped. */
  #looked = 0;
  /** The other plan that it is compared with, kept open as long. */
  #other: OpenPlan | null = null;
  readonly #watch: ComparisonWatch;
  readonly #subscriptions: readonly { dispose(): unknown }[];

  constructor(
    private readonly panel: vscode.WebviewPanel,
    private readonly setting: ComparisonSetting,
    { uri, against, look }: ComparisonStart,
    closed: (panel: ComparisonPanel) => void,
  ) {
    const { extensionUri, server, lastCommits } = setting;
    const { webview } = panel;
    this.uri = uri;
    this.#against = against;
    this.#look = look;
    webview.options = { enableScripts: true, localResourceRoots: pageRoots(extensionUri) };
    this.#watch = server.watchComparison(uri.toString(), (comparison) => this.#told(comparison));
    this.#subscriptions = [
      this.#watch,
      new OpenPlan(uri, {
        opened: () => this.#opened(),
        left: (why) => this.#left(why),
      }),
      lastCommits.onDidChange((changed) => {
        const isOurs = changed === uri.toString() && this.#against.kind === "last commit";
        if (isOurs) void this.#find();
      }),
      webview.onDidReceiveMessage((message: unknown) => {
        if (isFromComparison(message)) this.#listen(message);
      }),
    ];
    panel.onDidDispose(() => {
      this.#other?.dispose();
      for (const subscription of this.#subscriptions) subscription.dispose();
      closed(this);
    });
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#ready = false;
    });
    panel.title = `Changes: ${planName(uri)}`;
    panel.iconPath = planIcon(extensionUri);
    webview.html = webviewPage(webview, extensionUri, "comparison");
    void this.#find();
  }

  get active(): boolean {
    return this.panel.active;
  }

  /** Compares with something else, or shows another wall. */
  show(against: Against, look: Partial<ComparisonLook>): void {
    this.#against = against;
    this.#look = { ...this.#look, ...look };
    this.#comparison = null;
    this.#sendPlan();
    void this.#find();
    this.panel.reveal();
  }

  dispose(): void {
    this.panel.dispose();
  }

  #listen(message: FromComparison): void {
    switch (message.type) {
      case "ready":
        this.#ready = true;
        this.#sendPlan();
        return;
      case "look":
        this.#look = message.look;
        this.#watchOn();
        return;
      case "painted":
        return;
    }
  }

  async #find(): Promise<void> {
    const looked = ++this.#looked;
    this.#other?.dispose();
    this.#other = null;
    const against = this.#against;
    if (against.kind === "plan") {
      this.#other = this.#follow(vscode.Uri.parse(against.uri));
      return;
    }
    const revision = against.kind === "revision" ? against.revision : LAST;
    const version = await this.setting.history.at(this.uri, revision);
    if (looked === this.#looked) this.#take(version);
  }

  /** Another plan, as it is written at any time. */
  #follow(uri: vscode.Uri): OpenPlan {
    const old = { uri: uri.toString(), text: null, revision: null };
    const words = `${planName(uri)} as it is now`;
    return new OpenPlan(uri, {
      opened: () => this.#take({ kind: "found", words, old }),
      left: (why) => this.#take(missing(`${why}.`)),
    });
  }

  #take(version: OldVersion | Missing): void {
    this.#version = version;
    this.#sendVersion();
    this.#watchOn();
  }

  /** Has the server tell what is looked at, as long as there is something to compare. */
  #watchOn(): void {
    const old = this.#version && !isMissing(this.#version) ? this.#version.old : null;
    this.#watch.show(this.#gone === null ? old : null, this.#look);
  }

  #told(comparison: PlanComparison): void {
    this.#comparison = comparison;
    this.#send({ type: "comparison", comparison });
  }

  #opened(): void {
    const wasGone = this.#gone !== null;
    this.#gone = null;
    if (wasGone) this.#sendVersion();
    this.#watchOn();
  }

  #left(why: string): void {
    this.#gone = `${why}.`;
    this.#sendVersion();
    this.#watchOn();
  }

  #sendPlan(): void {
    const { uri } = this;
    const told = { uri: uri.toString(), name: planName(uri) };
    this.#send({ type: "plan", ...told, against: this.#against, look: this.#look });
    this.#sendVersion();
    if (this.#comparison) this.#send({ type: "comparison", comparison: this.#comparison });
  }

  #sendVersion(): void {
    const version = this.#version;
    if (this.#gone !== null) this.#send({ type: "missing", why: this.#gone });
    else if (version?.kind === "missing") this.#send({ type: "missing", why: version.why });
    else if (version) this.#send({ type: "against", words: version.words });
  }

  #send(message: ToComparison): void {
    if (this.#ready) void this.panel.webview.postMessage(message);
  }
}

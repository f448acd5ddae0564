import * as vscode from "vscode";
import { isSheetState } from "../preview/sheet-messages.js";
import { LANGUAGE } from "./client-options.js";
import { planName } from "./plan-name.js";
import type { PlanServer } from "./plan-server.js";
import { SheetPanel } from "./sheet-panel.js";

/** The open sheets, one for each plan. */
export class Sheets implements vscode.WebviewPanelSerializer, vscode.Disposable {
  readonly #panels = new Set<SheetPanel>();

  constructor(
    private readonly extensionUri: vscode.Uri,
    private readonly server: PlanServer,
  ) {}

  /** Shows the sheet of a plan, else that of the text with the focus. */
  open(wanted?: vscode.Uri): SheetPanel | null {
    const uri = wanted ?? activePlan();
    if (!uri) {
      void vscode.window.showInformationMessage("Open a plan first: a file ending in .tileplan.");
      return null;
    }
    const standing = [...this.#panels].find((panel) => panel.uri.toString() === uri.toString());
    if (standing) {
      standing.reveal();
      return standing;
    }
    const panel = vscode.window.createWebviewPanel(
      SheetPanel.type,
      planName(uri),
      vscode.ViewColumn.Active,
      { enableScripts: true },
    );
    return this.#add(panel, uri);
  }

  /** Saves the sheet with the focus, else that of a plan's text. */
  async save(wanted?: vscode.Uri): Promise<void> {
    const active = [...this.#panels].find((panel) => panel.active);
    await (wanted || !active ? this.open(wanted) : active)?.save();
  }

  /** Brings a sheet back after the window was loaded again. */
  deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    if (isSheetState(state)) this.#add(panel, vscode.Uri.parse(state.uri));
    else panel.dispose();
    return Promise.resolve();
  }

  dispose(): void {
    for (const panel of [...this.#panels]) panel.dispose();
  }

  #add(panel: vscode.WebviewPanel, uri: vscode.Uri): SheetPanel {
    const added = new SheetPanel(panel, this.extensionUri, this.server, uri, (closed) =>
      this.#panels.delete(closed),
    );
    this.#panels.add(added);
    return added;
  }
}

function activePlan(): vscode.Uri | undefined {
  const document = vscode.window.activeTextEditor?.document;
  return document?.languageId === LANGUAGE ? document.uri : undefined;
}

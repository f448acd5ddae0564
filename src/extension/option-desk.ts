import * as vscode from "vscode";
import type { PlanOption, PlanOptions } from "../service/index.js";
import type { PlanServer } from "./plan-server.js";

/** Which of the layouts that a page shows is meant. */
export interface ChosenOption {
  readonly version: number;
  readonly group: number;
  readonly option: number;
}

const CHANGED =
  "The text has changed since these layouts were worked out: choose from those that it has now.";

/** The layouts that one preview shows: asked of the server, and written into the text when one is taken. */
export class OptionDesk implements vscode.Disposable {
  #asking: vscode.CancellationTokenSource | null = null;
  #told: PlanOptions | null = null;

  constructor(private readonly server: PlanServer) {}

  /** The layouts of a plan, or of a wall of it; what was asked before is called off. null when they can't be told. */
  async ask(uri: vscode.Uri, wall: string | null): Promise<PlanOptions | null> {
    this.dispose();
    const asking = new vscode.CancellationTokenSource();
    this.#asking = asking;
    const options = await this.server.options({ uri: uri.toString(), wall }, asking.token);
    if (asking.token.isCancellationRequested) return null;
    this.#told = options;
    return options;
  }

  /**
   * Writes a layout into its plan's text as one edit. Rejects with what to tell a person where it can't
   * be: then nothing is written.
   */
  async take(uri: vscode.Uri, chosen: ChosenOption): Promise<void> {
    const option = this.#optionOf(uri, chosen);
    const document = await vscode.workspace.openTextDocument(uri);
    if (!option || document.version !== chosen.version) throw new Error(CHANGED);
    const edit = new vscode.WorkspaceEdit();
    for (const { range, text } of option.edits) {
      const { start, end } = range;
      const place = new vscode.Range(start.line, start.character, end.line, end.character);
      edit.replace(uri, place, text);
    }
    const written = await vscode.workspace.applyEdit(edit);
    if (!written) throw new Error("The layout could not be written into the text.");
  }

  /** Calls off what is asked. */
  dispose(): void {
    this.#asking?.cancel();
    this.#asking?.dispose();
    this.#asking = null;
  }

  #optionOf(uri: vscode.Uri, { version, group, option }: ChosenOption): PlanOption | null {
    const told = this.#told;
    if (told?.uri !== uri.toString() || told.version !== version) return null;
    return told.groups[group]?.options[option] ?? null;
  }
}

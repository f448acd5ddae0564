import * as vscode from "vscode";
import { type Against, isComparisonState } from "../preview/comparison-messages.js";
import type { ComparisonLook } from "../service/index.js";
import {
  ComparisonPanel,
  type ComparisonSetting,
  type ComparisonStart,
} from "./comparison-panel.js";
import { planName } from "./plan-name.js";

/** The first look of a comparison: how it stands before a person chose another. */
const FIRST_LOOK: ComparisonLook = { way: "sides", wall: null };

/** The open comparisons, one for each plan. */
export class Comparisons implements vscode.WebviewPanelSerializer, vscode.Disposable {
  readonly #panels = new Set<ComparisonPanel>();

  constructor(private readonly setting: ComparisonSetting) {}

  /** The plan of the comparison with the focus. */
  get activePlan(): vscode.Uri | null {
    return [...this.#panels].find((panel) => panel.active)?.uri ?? null;
  }

  /** Compares a plan with something, at a wall if one is named. */
  open(uri: vscode.Uri, against: Against, wall?: string): void {
    const look = wall === undefined ? {} : { wall };
    const standing = [...this.#panels].find((panel) => panel.uri.toString() === uri.toString());
    if (standing) {
      standing.show(against, look);
      return;
    }
    // Beside the text that is compared, since it is followed; else like any other file.
    const edited = vscode.window.activeTextEditor?.document.uri.toString() === uri.toString();
    const panel = vscode.window.createWebviewPanel(
      ComparisonPanel.type,
      planName(uri),
      edited ? vscode.ViewColumn.Beside : vscode.ViewColumn.Active,
      { enableScripts: true },
    );
    this.#add(panel, { uri, against, look: { ...FIRST_LOOK, ...look } });
  }

  /** Brings a comparison back after the window was loaded again. */
  deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    if (isComparisonState(state)) {
      const { uri, against, look } = state;
      this.#add(panel, { uri: vscode.Uri.parse(uri), against, look });
    } else panel.dispose();
    return Promise.resolve();
  }

  dispose(): void {
    for (const panel of [...this.#panels]) panel.dispose();
  }

  #add(panel: vscode.WebviewPanel, start: ComparisonStart): void {
    const added = new ComparisonPanel(panel, this.setting, start, (closed) =>
      this.#panels.delete(closed),
    );
    this.#panels.add(added);
  }
}

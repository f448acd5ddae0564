import * as vscode from "vscode";
import { type ExportFormat, isPreviewState } from "../preview/messages.js";
import { LANGUAGE } from "./client-options.js";
import { PreviewPanel, type PreviewSetting, type PreviewStart } from "./preview-panel.js";
import { previewColumn, type PreviewPlace } from "./preview-side.js";
import { planName } from "./plan-name.js";

/** The open previews: those that are pinned to a plan, and the one that follows the text. */
export class Previews implements vscode.WebviewPanelSerializer, vscode.Disposable {
  readonly #panels = new Set<PreviewPanel>();
  readonly #subscriptions: vscode.Disposable[];

  constructor(
    private readonly setting: PreviewSetting,
    /** Shows the whole comparison of a plan. */
    private readonly compare: (uri: vscode.Uri) => void,
  ) {
    const { window, workspace } = vscode;
    this.#subscriptions = [
      window.onDidChangeActiveTextEditor(() => this.#follow()),
      window.onDidChangeTextEditorSelection(() => this.#point()),
      workspace.onDidRenameFiles(({ files }) => this.#moveWith(files)),
    ];
  }

  /** The plan of the preview with the focus. */
  get activePlan(): vscode.Uri | null {
    return [...this.#panels].find((panel) => panel.active)?.uri ?? null;
  }

  /** Shows a plan, else that of the text with the focus. */
  async open(wanted: vscode.Uri | undefined, place: PreviewPlace): Promise<void> {
    const editor = activePlanEditor();
    const uri = wanted ?? editor?.document.uri;
    if (!uri) {
      void vscode.window.showInformationMessage("Open a plan first: a file ending in .tileplan.");
      return;
    }
    const aside = place === "side";
    const standing = this.#panelFor(uri);
    if (standing) {
      standing.show(uri);
      standing.reveal(aside);
      return;
    }
    const viewColumn = await previewColumn(place);
    const panel = vscode.window.createWebviewPanel(
      PreviewPanel.type,
      planName(uri),
      { viewColumn, preserveFocus: aside },
      { enableScripts: true },
    );
    this.#add(panel, { uri, pinned: false, marked: true });
    // A group that was made for the preview has taken the focus from the text.
    if (aside && editor) {
      const { document, viewColumn: column } = editor;
      await vscode.window.showTextDocument(document, column ? { viewColumn: column } : {});
    }
  }

  /** Saves what a preview shows: the one with the focus, else that of the text's plan. */
  async export(): Promise<void> {
    const active = [...this.#panels].find((panel) => panel.active);
    const uri = active?.uri ?? activePlanEditor()?.document.uri;
    const formats: readonly (vscode.QuickPickItem & { readonly format: ExportFormat })[] = [
      { format: "svg", label: "SVG", description: "lines and text, at any size" },
      { format: "png", label: "PNG", description: "pixels, as on the screen" },
    ];
    const choice = await vscode.window.showQuickPick(formats, {
      title: "Export Picture",
      placeHolder: "What is seen in the preview, as",
    });
    if (!choice) return;
    if (!active) await this.open(uri, "side");
    (active ?? (uri && this.#panelFor(uri)))?.export(choice.format);
  }

  /** Brings a preview back after the window was loaded again. */
  deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    if (isPreviewState(state)) {
      const { uri, pinned, marked = true } = state;
      this.#add(panel, { uri: vscode.Uri.parse(uri), pinned, marked });
    } else panel.dispose();
    return Promise.resolve();
  }

  dispose(): void {
    for (const disposable of [...this.#subscriptions, ...this.#panels]) disposable.dispose();
  }

  #add(panel: vscode.WebviewPanel, start: PreviewStart): void {
    const preview = new PreviewPanel(panel, this.setting, start, {
      closed: (closed) => this.#panels.delete(closed),
      unpinned: () => this.#follow(),
      compare: (uri) => this.compare(uri),
    });
    this.#panels.add(preview);
    this.#point();
  }

  /** The preview that is pinned to a plan, else the one that follows the text. */
  #panelFor(uri: vscode.Uri): PreviewPanel | undefined {
    const key = uri.toString();
    const panels = [...this.#panels];
    return (
      panels.find((panel) => panel.pinned && panel.uri.toString() === key) ??
      panels.find((panel) => !panel.pinned)
    );
  }

  #follow(): void {
    const document = activePlanEditor()?.document;
    if (!document) return;
    // A list of stock has nothing to show: the plan that uses it stays, and shows what becomes of it.
    if (hasWall(document)) {
      for (const panel of this.#panels) if (!panel.pinned) panel.show(document.uri);
    }
    this.#point();
  }

  #point(): void {
    const editor = activePlanEditor();
    if (!editor) return;
    const { line, character } = editor.selection.active;
    const cursor = { uri: editor.document.uri.toString(), position: { line, character } };
    for (const panel of this.#panels) panel.point(cursor);
  }

  /** A plan that was renamed, or whose folder was, is shown under its new name. */
  #moveWith(files: readonly { readonly oldUri: vscode.Uri; readonly newUri: vscode.Uri }[]): void {
    for (const panel of this.#panels) {
      const { path } = panel.uri;
      for (const { oldUri, newUri } of files) {
        if (path !== oldUri.path && !path.startsWith(`${oldUri.path}/`)) continue;
        panel.show(newUri.with({ path: newUri.path + path.slice(oldUri.path.length) }));
        break;
      }
    }
  }
}

/** The editor with the focus, when its text is a plan. */
function activePlanEditor(): vscode.TextEditor | undefined {
  const editor = vscode.window.activeTextEditor;
  return editor?.document.languageId === LANGUAGE ? editor : undefined;
}

function hasWall(document: vscode.TextDocument): boolean {
  return /^\s*wall\b/m.test(document.getText());
}

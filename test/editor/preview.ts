import * as vscode from "vscode";
import { hands, type Where } from "./hands.js";
import { until } from "./until.js";

/** What a test asks of a preview that shows: the only one, or that of a plan's file. */
export class ShownPreview {
  readonly where: Where;

  constructor(plan?: string) {
    this.where = plan === undefined ? "preview" : `preview:${plan}`;
  }

  /** The value of an expression in the preview's page. */
  ask<Value>(expression: string): Promise<Value> {
    return hands.evaluate<Value>(expression, this.where);
  }

  /** Waits until the drawing has a text, such as a figure of a dimension line. */
  untilDrawn(text: string): Promise<true> {
    const texts = `[...document.querySelectorAll("svg.picture text")]`;
    const has = `${texts}.some((each) => each.textContent === ${JSON.stringify(text)})`;
    return until(`${text} in the picture`, () => this.ask<boolean>(has)).then(() => true);
  }

  /** Waits until the list of findings names a code. */
  untilListed(code: string): Promise<true> {
    const codes = `[...document.querySelectorAll(".findings code")]`;
    const has = `${codes}.some((each) => each.textContent === ${JSON.stringify(code)})`;
    return until(`${code} in the list`, () => this.ask<boolean>(has)).then(() => true);
  }

  /** The note over the picture, or null. */
  note(): Promise<string | null> {
    const note = `document.querySelector(".note")`;
    return this.ask(`${note}.hidden ? null : ${note}.textContent`);
  }

  /** The zoom as the toolbar tells it, and the middle of what is seen, to the millimetre. */
  view(): Promise<{ readonly zoom: string; readonly middle: string }> {
    return this.ask(`{
      const box = document.querySelector("svg.picture").viewBox.baseVal;
      const middle = [box.x + box.width / 2, box.y + box.height / 2];
      ({ zoom: document.querySelector(".zoom").textContent, middle: middle.map(Math.round).join() });
    }`);
  }

  /** The middle of a wall's whole tiles in the window. */
  async middleOf(wall: string): Promise<{ readonly x: number; readonly y: number }> {
    const selector = `svg.picture [data-wall="${wall}"] [data-kind="whole"]`;
    const box = await hands.boxOf({ selector, where: this.where });
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }
}

/** Opens the preview beside the text with the focus, and waits for its picture. */
export async function openPreview(plan?: string): Promise<ShownPreview> {
  await vscode.commands.executeCommand("gaugelath.openPreviewToSide");
  const preview = new ShownPreview(plan);
  await hands.waitFor({ selector: "svg.picture", where: preview.where, state: "attached" });
  return preview;
}

/** The titles of the open previews. */
export function previewTabs(): string[] {
  return vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(({ input }) => input instanceof vscode.TabInputWebview)
    .map(({ label }) => label);
}

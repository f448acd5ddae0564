import * as vscode from "vscode";
import { hands, type Where } from "./hands.js";
import { until } from "./until.js";

/** What a test asks of the comparison that shows. */
export class ShownComparison {
  readonly where: Where = "frame:.board";

  ask<Value>(expression: string): Promise<Value> {
    return hands.evaluate<Value>(expression, this.where);
  }

  /** Waits until the summary has a line that fits. */
  untilSaid(words: RegExp): Promise<string> {
    const lines = `[...document.querySelectorAll(".summary li, .summary p")].map((each) => each.textContent)`;
    return until(`${String(words)} in the summary`, async () => {
      const told = await this.ask<string[]>(lines).catch((): string[] => []);
      return told.find((line) => words.test(line));
    });
  }

  /** What is compared with what. */
  untilAgainst(words: RegExp): Promise<string> {
    return until(`against ${String(words)}`, async () => {
      const told = await this.ask<string>(`document.querySelector(".against").textContent`).catch(
        () => "",
      );
      return words.test(told) && told;
    });
  }

  /** Waits for the note over the picture. */
  untilNote(words: RegExp): Promise<string> {
    const note = `document.querySelector(".note")`;
    return until(`the note ${String(words)}`, async () => {
      const told = await this.ask<string | null>(`${note}.hidden ? null : ${note}.textContent`);
      return told !== null && words.test(told) && told;
    });
  }

  /** Chooses how both states are shown, and waits until they are. */
  async choose(way: "Side by side" | "Overlay" | "Slider"): Promise<void> {
    await hands.click({ selector: `button:has-text("${way}")`, where: this.where });
    const drawn = { "Side by side": "sides", Overlay: "overlay", Slider: "slider" }[way];
    await hands.waitFor({ selector: `.board[data-way="${drawn}"]`, where: this.where });
  }

  /** The wall in the picture, as its button says. */
  wall(): Promise<string | null> {
    return this.ask(`document.querySelector(".walls [aria-current]")?.dataset.wall ?? null`);
  }
}

/** Waits for the comparison of a plan to show. */
export async function comparisonOf(name: string): Promise<ShownComparison> {
  await until(`the comparison of ${name}`, () => comparisonTabs().includes(`Changes: ${name}`));
  const comparison = new ShownComparison();
  await hands.waitFor({ selector: ".board", where: comparison.where });
  return comparison;
}

export function comparisonTabs(): string[] {
  return vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(
      ({ input }) =>
        input instanceof vscode.TabInputWebview && input.viewType.endsWith("gaugelath.comparison"),
    )
    .map(({ label }) => label);
}

/** Waits until the editor tells something; looked up where it keeps what it told. */
export async function untilTold(words: string): Promise<void> {
  await vscode.commands.executeCommand("notifications.showList");
  await hands.waitFor({
    selector: `.notifications-center .notification-list-item:has-text(${JSON.stringify(words)})`,
  });
  await vscode.commands.executeCommand("notifications.clearAll");
}

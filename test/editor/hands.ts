import * as vscode from "vscode";
import { readTask } from "./task.js";

/**
 * Where a person acts: in the editor's window, in a preview that shows, in that of a plan's file, or
 * in the frame that has something, by a CSS selector.
 */
export type Where = "window" | "preview" | `preview:${string}` | `frame:${string}`;

/** A thing that a person sees: by a CSS selector, the nth of them. */
export interface Thing {
  readonly selector: string;
  readonly where?: Where;
  readonly nth?: number;
}

export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Counts {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

async function act<Answer>(act: string, rest: object): Promise<Answer> {
  const { hands } = await readTask();
  const response = await fetch(hands, { method: "POST", body: JSON.stringify({ ...rest, act }) });
  const text = await response.text();
  if (!response.ok) throw new Error(`${act} ${JSON.stringify(rest)}: ${text}\n${await picture()}`);
  return (JSON.parse(text) as { answer: Answer }).answer;
}

/** Words on a picture of what is seen now, for the message of a failure. */
export async function picture(): Promise<string> {
  const { hands: url } = await readTask();
  const body = JSON.stringify({ act: "screenshot", name: `failed-${Date.now()}` });
  const response = await fetch(url, { method: "POST", body });
  return `What was seen: ${await response.text()}`;
}

/**
 * A person's hands and eyes on the editor's window: keys, mouse, screenshots. Each waits a while for
 * its thing to show, and throws when it doesn't.
 */
export const hands = {
  /** Waits until the keys go to a text. */
  untilInText: () =>
    act<null>("waitFor", { selector: ".part.editor .monaco-editor.focused", state: "attached" }),
  /** A key with its modifiers, such as `Control+Shift+P`. */
  press: (key: string) => act<null>("press", { key }),
  /** Types a text, with milliseconds between keys. */
  type: (text: string, delay = 0) => act<null>("type", { text, delay }),
  click: (thing: Thing, options: object = {}) => act<null>("click", { ...thing, options }),
  hover: (thing: Thing) => act<null>("hover", thing),
  waitFor: (thing: Thing & { readonly state?: "visible" | "hidden" | "attached" | "detached" }) =>
    act<null>("waitFor", thing),
  /** Where a thing stands in the window. */
  boxOf: (thing: Thing) => act<Area>("boxOf", thing),
  mouse: (move: "move" | "down" | "up" | "wheel" | "click", ...args: readonly unknown[]) =>
    act<null>("mouse", { move, args }),
  /** The value of a JavaScript expression in the window or the preview. */
  evaluate: <Value>(expression: string, where: Where = "window") =>
    act<Value>("evaluate", { expression, where }),
  resize: (width: number, height: number) => act<null>("resize", { width, height }),
  /** Such as `{ reducedMotion: "reduce" }` or `{ forcedColors: "active" }`. */
  emulate: (media: object) => act<null>("emulate", { media }),
  /** Takes a picture of the window; returns its file. */
  screenshot: (name: string) => act<string>("screenshot", { name }),
  /** Loads the window anew: the tests begin again, in the second phase. */
  reload: async () => {
    await act<null>("secondPhase", {});
    await vscode.commands.executeCommand("workbench.action.reloadWindow");
    // The first phase ends with its extension host, and reports nothing.
    await new Promise(() => undefined);
  },
  /** Tells a line of the tests' report. */
  tell: (line: string) => act<null>("tell", { line }),
  /** Closes the report. */
  report: (counts: Counts) => act<null>("report", { counts }),
};

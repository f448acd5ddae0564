/// <reference lib="webworker" />
import type { Press } from "./answer-sheets.js";

declare const gaugelathPrint: Press["print"];

/** What prints, fetched by a worker from where its own script stands. */
export async function workerPress(scope: WorkerGlobalScope, script: string): Promise<Press> {
  const font = async (name: string): Promise<Uint8Array> => {
    const answer = await fetch(new URL(`fonts/${name}`, script));
    if (!answer.ok) throw new Error(`The print font could not be loaded: ${answer.status}`);
    return new Uint8Array(await answer.arrayBuffer());
  };
  const fonts = { regular: await font("regular.ttf"), bold: await font("bold.ttf") };
  scope.importScripts(new URL("print.cjs", script).href);
  return { print: gaugelathPrint, fonts };
}

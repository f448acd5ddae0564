/// <reference lib="webworker" />
import type { Press } from "./answer-sheets.js";

declare const gaugelathPrint: Press["print"];

/**
 * What prints, fetched by a worker: the files beside an address. Rejects where they aren't there. An
 * editor may start a worker from a script of its own, so the worker's own address is not always it.
 */
export async function workerPress(scope: WorkerGlobalScope, beside: string): Promise<Press> {
  const font = async (name: string): Promise<Uint8Array> => {
    const answer = await fetch(new URL(`fonts/${name}`, beside));
    if (!answer.ok) throw new Error(`The print font could not be loaded: ${answer.status}`);
    return new Uint8Array(await answer.arrayBuffer());
  };
  const fonts = { regular: await font("regular.ttf"), bold: await font("bold.ttf") };
  scope.importScripts(new URL("print.js", beside).href);
  return { print: gaugelathPrint, fonts };
}

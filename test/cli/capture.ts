import { fileURLToPath } from "node:url";
import { execute } from "../../src/cli/execute.js";
import type { Host } from "../../src/cli/host.js";

/** What a command wrote and ended with. */
export interface Captured {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** The built programs' folder. */
const ASSETS = fileURLToPath(new URL("../../dist", import.meta.url));

/** Runs a command in a workplace; `given.input` is its standard input. */
export async function gaugelath(
  { folder }: { readonly folder: string },
  words: readonly string[],
  given: {
    readonly input?: string | Uint8Array;
    readonly colours?: boolean;
    readonly watched?: boolean;
    readonly worker?: string;
  } = {},
): Promise<Captured> {
  const { input = "", colours = false } = given;
  let out = "";
  let err = "";
  const host: Host = {
    folder,
    colours: { out: colours, err: colours },
    readStandardInput: () => Promise.resolve(Buffer.from(input as string)),
    out: (chunks) => {
      for (const chunk of chunks) {
        out += typeof chunk === "string" ? chunk : Buffer.from(chunk).toString("latin1");
      }
      return Promise.resolve();
    },
    err: (text) => void (err += text),
    watched: given.watched === true,
    worker: given.worker ?? null,
    assets: ASSETS,
  };
  const exit = await execute(words, host);
  return { exit, out, err };
}

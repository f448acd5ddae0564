import { execute } from "../../src/cli/execute.js";
import type { Host } from "../../src/cli/host.js";

/** What a command wrote and ended with. */
export interface Captured {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

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
      for (const chunk of chunks) out += chunk;
      return Promise.resolve();
    },
    err: (text) => void (err += text),
    watched: given.watched === true,
    worker: given.worker ?? null,
  };
  const exit = await execute(words, host);
  return { exit, out, err };
}

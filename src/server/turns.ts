import type { CancellationToken } from "vscode-languageserver";
import type { Turns } from "../service/index.js";

/** Lets messages in between the parts of a long walk, a call to stop it among them. */
export function turnsOf(token: CancellationToken): Turns {
  return {
    get cancelled() {
      return token.isCancellationRequested;
    },
    pause: () => new Promise((resolve) => setTimeout(resolve)),
  };
}

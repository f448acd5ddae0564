import type { CancellationToken, Connection } from "vscode-languageserver";
import type { PlanDesk } from "./plan-desk.js";
import * as protocol from "./protocol.js";
import { turnsOf } from "./turns.js";

/** Answers what clients ask of a plan's layouts: worked out when they are asked for, and never else. */
export function answerOptions(connection: Connection, desk: PlanDesk): void {
  connection.onRequest(
    protocol.OPTIONS,
    async (
      { uri, wall }: protocol.OptionsRequest,
      token: CancellationToken,
    ): Promise<protocol.OptionsAnswer> => {
      const document = await desk.ready(uri);
      if (!document || token.isCancellationRequested) return null;
      return desk.service.options(document, wall, turnsOf(token));
    },
  );
}

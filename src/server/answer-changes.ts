import { CodeLensRefreshRequest, type Connection } from "vscode-languageserver";
import type { ChangeDesk } from "./change-desk.js";
import type { PlanDesk } from "./plan-desk.js";
import * as protocol from "./protocol.js";
import type { Publisher } from "./publisher.js";
import type { Settings } from "./settings.js";

/** What answers speak with. */
export interface ChangeEnds {
  readonly desk: PlanDesk;
  readonly changes: ChangeDesk;
  readonly publisher: Publisher;
  readonly settings: Settings;
  /** Whether the client asks for lenses again when it is told to. */
  readonly canRefresh: () => boolean;
}

/** Answers what clients ask of changes: lenses, and what is watched. */
export function answerChanges(
  connection: Connection,
  { desk, changes, publisher, settings, canRefresh }: ChangeEnds,
): void {
  connection.onNotification(protocol.LAST_COMMIT, ({ uri, old }: protocol.LastCommit) => {
    changes.setLast(uri, old);
    if (canRefresh()) void connection.sendRequest(CodeLensRefreshRequest.type);
  });

  connection.onNotification(protocol.WATCH_COMPARISON, (watched: protocol.WatchComparison) => {
    changes.watch(watched);
    if (watched.old) publisher.tellNow(watched.uri);
  });

  connection.onCodeLens(async ({ textDocument: { uri } }, token) => {
    const document = await desk.ready(uri);
    if (!document || token.isCancellationRequested) return null;
    if (!(await settings.of(uri)).changes) return [];
    const lenses = await changes.lenses(document);
    return lenses.map(({ wall, range, text }) => ({
      range,
      command: { title: text, command: protocol.SHOW_CHANGES, arguments: [uri, wall] },
    }));
  });
}

import {
  CodeLensRefreshRequest,
  type Connection,
  DidChangeWatchedFilesNotification,
  FileChangeType,
  type InitializeParams,
  type InitializeResult,
  TextDocumentSyncKind,
} from "vscode-languageserver";
import { answerChanges } from "./answer-changes.js";
import { answerOptions } from "./answer-options.js";
import { answerSheets, type Press } from "./answer-sheets.js";
import { ChangeDesk } from "./change-desk.js";
import { clientFiles, oldFiles } from "./client-files.js";
import type { FileSystem } from "./file-system.js";
import { answerFeatures, FEATURES } from "./features.js";
import { OldPlans } from "./old-plans.js";
import { OpenDocuments } from "./open-documents.js";
import { PlanDesk } from "./plan-desk.js";
import * as protocol from "./protocol.js";
import { Publisher } from "./publisher.js";
import { Settings } from "./settings.js";

const PLANS = "**/*.tileplan";

/**
 * Serves one client over a connection. `filesOver` adds what the server reaches itself to the client's
 * files; `loadPress` loads what prints sheets; it is told where the client says that the server's files are.
 */
export function startServer(
  connection: Connection,
  filesOver: (client: FileSystem) => FileSystem,
  loadPress: (folder: string | null) => Promise<Press>,
): void {
  let client: InitializeParams["capabilities"] = {};
  let abilities: protocol.ClientAbilities = {};
  const settings = new Settings(connection, () => client.workspace?.configuration === true);
  const system = filesOver(clientFiles(connection, () => abilities.files === true));
  const desk = new PlanDesk(system, () => documents);
  const oldPlans = new OldPlans(desk.service, desk.files, oldFiles(connection));
  const changes = new ChangeDesk(connection, desk, oldPlans);
  const publisher = new Publisher(connection, desk, () => documents, settings, changes);

  connection.onInitialize((params): InitializeResult => {
    client = params.capabilities;
    abilities = readAbilities(params.initializationOptions);
    desk.files.setFolders(foldersOf(params));
    return {
      capabilities: {
        ...FEATURES,
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: true },
        workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
      },
      serverInfo: { name: "gaugelath" },
    };
  });

  connection.onInitialized(async () => {
    if (client.workspace?.didChangeConfiguration?.dynamicRegistration) await settings.listen();
    if (client.workspace?.didChangeWatchedFiles?.dynamicRegistration) {
      await connection.client.register(DidChangeWatchedFilesNotification.type, {
        watchers: [{ globPattern: PLANS }],
      });
    }
    if (client.workspace?.workspaceFolders) {
      connection.workspace.onDidChangeWorkspaceFolders(() => {
        void connection.workspace.getWorkspaceFolders().then((folders) => {
          desk.files.setFolders((folders ?? []).map(({ uri }) => uri));
          publisher.scheduleAll();
        });
      });
    }
  });

  connection.onDidChangeConfiguration(() => {
    settings.forget();
    publisher.scheduleAll();
    if (client.workspace?.inlayHint?.refreshSupport) {
      void connection.languages.inlayHint.refresh();
    }
    if (canRefresh()) void connection.sendRequest(CodeLensRefreshRequest.type);
  });

  connection.onDidChangeWatchedFiles(({ changes }) => {
    for (const { uri, type } of changes) {
      desk.files.changed(uri, type !== FileChangeType.Deleted);
    }
    publisher.scheduleAll();
  });

  connection.onNotification(protocol.WATCH_PICTURE, (watched: protocol.WatchPicture) =>
    publisher.watch(watched),
  );

  connection.onRequest(
    protocol.SPOT,
    async (question: protocol.SpotRequest): Promise<protocol.SpotAnswer> => {
      const document = await desk.ready(question.uri);
      if (!document) return null;
      const { units } = await settings.of(question.uri);
      return desk.service.spot(document, question, units);
    },
  );

  answerFeatures(connection, desk, settings);
  answerOptions(connection, desk);
  answerSheets(connection, desk, () => loadPress(abilities.folder ?? null));
  const canRefresh = (): boolean => client.workspace?.codeLens?.refreshSupport === true;
  answerChanges(connection, { desk, changes, publisher, settings, canRefresh });

  /** Where files aren't watched, a save or an opened document is the time to look at them again. */
  const lookAgain = (): void => {
    if (client.workspace?.didChangeWatchedFiles) return;
    desk.files.forgetAll();
    publisher.scheduleAll();
  };

  const documents = new OpenDocuments(connection, {
    opened: lookAgain,
    saved: lookAgain,
    changed: (document) => {
      desk.files.open(document);
      publisher.changed(document);
    },
    closed: (document) => {
      desk.files.close(document);
      publisher.closed(document);
    },
  });
  connection.listen();
}

function readAbilities(options: unknown): protocol.ClientAbilities {
  if (typeof options !== "object" || options === null) return {};
  const folder = "folder" in options ? options.folder : null;
  return {
    files: "files" in options && options.files === true,
    ...(typeof folder === "string" && { folder }),
  };
}

/** Older clients name one folder. */
function foldersOf(params: InitializeParams): string[] {
  if (params.workspaceFolders) return params.workspaceFolders.map(({ uri }) => uri);
  const { rootUri } = params as { readonly rootUri?: string | null };
  return rootUri ? [rootUri] : [];
}

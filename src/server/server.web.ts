/// <reference lib="webworker" />
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
} from "vscode-languageserver/browser";
import { startServer } from "./start-server.js";
import { workerPress } from "./worker-press.js";

/** The server in a worker; it reaches files through its client alone. */
const scope = globalThis as unknown as DedicatedWorkerGlobalScope;
const connection = createConnection(
  new BrowserMessageReader(scope),
  new BrowserMessageWriter(scope),
);
startServer(
  connection,
  (client) => client,
  (folder) => workerPress(scope, folder ?? scope.location.href),
);

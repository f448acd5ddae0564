import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { diskFiles } from "./disk.js";
import { diskPress } from "./disk-press.js";
import { startServer } from "./start-server.js";

/** The server in a process of its own; the words after it say how the client is reached (--stdio, --node-ipc). */
startServer(createConnection(ProposedFeatures.all), diskFiles, () =>
  Promise.resolve(diskPress(__dirname)),
);

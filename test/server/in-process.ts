import { PassThrough } from "node:stream";
import {
  createConnection,
  createProtocolConnection,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import type { FileSystem } from "../../src/server/file-system.js";
import { startServer } from "../../src/server/start-server.js";

/** A client of a server in this process, which has files by way of the client alone unless told otherwise. */
export function clientInProcess(
  filesOver: (client: FileSystem) => FileSystem = (client) => client,
): ProtocolConnection {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  startServer(createConnection(toServer, toClient), filesOver);
  const client = createProtocolConnection(
    new StreamMessageReader(toClient),
    new StreamMessageWriter(toServer),
  );
  client.listen();
  return client;
}

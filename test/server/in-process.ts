import { fileURLToPath } from "node:url";
import { PassThrough } from "node:stream";
import {
  type Connection,
  createConnection,
  createProtocolConnection,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import type { FileSystem } from "../../src/server/file-system.js";
import { diskPress } from "../../src/server/disk-press.js";
import { startServer } from "../../src/server/start-server.js";

/** Where the built programs stand. */
const DIST = fileURLToPath(new URL("../../dist", import.meta.url));

/** Both ends of a connection in this process; the server's still has to be told to listen. */
export function connectionInProcess(): { server: Connection; client: ProtocolConnection } {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  const server = createConnection(toServer, toClient);
  const client = createProtocolConnection(
    new StreamMessageReader(toClient),
    new StreamMessageWriter(toServer),
  );
  client.listen();
  return { server, client };
}

/** A client of a server in this process, which has files by way of the client alone unless told otherwise. */
export function clientInProcess(
  filesOver: (client: FileSystem) => FileSystem = (client) => client,
): ProtocolConnection {
  const { server, client } = connectionInProcess();
  startServer(server, filesOver, () => Promise.resolve(diskPress(DIST)));
  return client;
}

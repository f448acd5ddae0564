import type { Connection } from "vscode-languageserver";
import type { FileSystem } from "./file-system.js";
import {
  FIND_PLANS,
  type FindPlans,
  READ_FILE,
  READ_OLD,
  type ReadFile,
  type ReadOld,
} from "./protocol.js";

/** Files by way of the client, where it says that it reads them; else there are none. */
export function clientFiles(connection: Connection, canRead: () => boolean): FileSystem {
  return {
    read: async (uri) => {
      if (!canRead()) return null;
      const asked: ReadFile = { uri };
      try {
        return await connection.sendRequest<string | null>(READ_FILE, asked);
      } catch {
        return null;
      }
    },
    find: async (folders, most) => {
      if (!canRead()) return [];
      const asked: FindPlans = { folders, most };
      try {
        return await connection.sendRequest<readonly string[]>(FIND_PLANS, asked);
      } catch {
        return [];
      }
    },
  };
}

/** Files as they were in a revision, by way of the client; null where it has none. */
export function oldFiles(
  connection: Connection,
): (uri: string, revision: string) => Promise<string | null> {
  return async (uri, revision) => {
    const asked: ReadOld = { uri, revision };
    try {
      return await connection.sendRequest<string | null>(READ_OLD, asked);
    } catch {
      return null;
    }
  };
}

import { readdir, readFile, stat } from "node:fs/promises";
import path from "node:path";
import { URI } from "vscode-uri";
import type { FileSystem } from "./file-system.js";

const EXTENSION = ".tileplan";
/** Larger files are no plans (the language reads two million characters at most). */
const LARGEST_FILE = 16_000_000;
/** Folders that hold what tools made, not what people wrote. */
const PASSED_OVER: ReadonlySet<string> = new Set(["node_modules", ".git"]);
/** Folders in folders: deeper than this a link goes round. */
const DEEPEST = 30;

/** The disk of this machine; other addresses are left to `otherwise`. */
export function diskFiles(otherwise: FileSystem): FileSystem {
  return {
    read: (uri) => (isOnDisk(uri) ? readText(URI.parse(uri).fsPath) : otherwise.read(uri)),
    find: async (folders, most) => {
      const found: string[] = [];
      for (const folder of folders.filter(isOnDisk)) {
        await collect(URI.parse(folder).fsPath, found, most, DEEPEST);
      }
      const others = folders.filter((folder) => !isOnDisk(folder));
      const elsewhere = others.length > 0 ? await otherwise.find(others, most - found.length) : [];
      return [...found.map((file) => URI.file(file).toString()), ...elsewhere];
    },
  };
}

function isOnDisk(uri: string): boolean {
  return uri.startsWith("file:");
}

async function readText(file: string): Promise<string | null> {
  try {
    if ((await stat(file)).size > LARGEST_FILE) return null;
    return await readFile(file, "utf8");
  } catch {
    return null;
  }
}

async function collect(
  folder: string,
  found: string[],
  most: number,
  depth: number,
): Promise<void> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  for (const entry of entries) {
    if (found.length >= most) return;
    const file = path.join(folder, entry.name);
    if (entry.isFile() && entry.name.endsWith(EXTENSION)) found.push(file);
    else if (entry.isDirectory() && !PASSED_OVER.has(entry.name) && depth > 0) {
      await collect(file, found, most, depth - 1);
    }
  }
}

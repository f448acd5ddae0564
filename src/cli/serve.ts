import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { Failure } from "./failure.js";

/**
 * `gaugelath serve --stdio`: the language server, which is a program of its own beside this one. It
 * reads the words of this process and ends it when its client says so, so this never returns.
 */
export function serve(program = path.join(__dirname, "..", "server.js")): Promise<never> {
  if (!existsSync(program))
    throw new Failure("the language server is missing", "build it: npm run build");
  createRequire(program)(program);
  return new Promise(() => undefined);
}

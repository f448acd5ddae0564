import type { LanguageClientOptions } from "vscode-languageclient";
import type { ClientAbilities } from "../server/protocol.js";

export const LANGUAGE = "tileplan";
export const CLIENT_ID = "gaugelath";
export const CLIENT_NAME = "Gaugelath";

/** Plans on every kind of file system, saved or not; `own` is what one kind of client adds. */
export function clientOptions(own: ClientAbilities = {}): LanguageClientOptions {
  const abilities: ClientAbilities = { files: true, ...own };
  return { documentSelector: [{ language: LANGUAGE }], initializationOptions: abilities };
}

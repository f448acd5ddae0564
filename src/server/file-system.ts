/** How the server reads plans that no editor has open. */
export interface FileSystem {
  /** A file's text, or null when there is none that can be read. */
  readonly read: (uri: string) => Promise<string | null>;
  /** The addresses of the plans in these folders, at most `most` of them. */
  readonly find: (folders: readonly string[], most: number) => Promise<readonly string[]>;
}

/** What the host knows of the files round a document; the service itself touches none. */
export interface Workspace {
  /** The newest text of a file, saved or not, or null when there is none; paths with forward slashes. */
  readonly read: (file: string) => string | null;
  /** The folder that `use` may not leave, for a file. */
  readonly rootOf: (file: string) => string;
  /** Every plan of the workspace that is known, the open ones among them. */
  readonly files: () => Iterable<string>;
  readonly uriOf: (file: string) => string;
}

/** Lets a long walk be called off, and lets others have their turn. */
export interface Turns {
  readonly cancelled: boolean;
  readonly pause: () => Promise<void>;
}

/** One version of a plan's text. A host makes a new one for each change, and never changes one. */
export interface PlanDocument {
  /** Its path, with forward slashes. */
  readonly file: string;
  readonly uri: string;
  /** As the editor counts. */
  readonly version: number;
  readonly text: string;
}

/** A plan before and after, by the paths of both; null where there is none. */
export interface PlanPair {
  /** Its name for people: the path after, or where it is gone the one before. */
  readonly name: string;
  readonly before: string | null;
  readonly after: string | null;
}

/** The comparison that the README shows: a plan, the change made to it, and the overlay of both. */
export const COMPARED: {
  readonly plan: string;
  readonly change: readonly [string, string];
  readonly picture: string;
};

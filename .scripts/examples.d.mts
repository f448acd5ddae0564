/** The comparison that the README shows: a plan, the change made to it, and the overlay of both. */
export const COMPARED: {
  readonly plan: string;
  readonly change: readonly [string, string];
  readonly picture: string;
};
/** The plan that the README shows as a room unfolded, and its picture. */
export const UNFOLDED: { readonly plan: string; readonly picture: string };

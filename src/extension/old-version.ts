import type { OldText } from "../server/protocol.js";

/** A plan as it was, and what that state is called for people. */
export interface OldVersion {
  readonly kind: "found";
  /** Such as `the last commit, 1a2b3c4 "Move the niche"`. */
  readonly words: string;
  readonly old: OldText;
}

/** There is nothing to compare with. */
export interface Missing {
  readonly kind: "missing";
  /** Why, and what helps, in whole sentences. */
  readonly why: string;
}

export function missing(why: string): Missing {
  return { kind: "missing", why };
}

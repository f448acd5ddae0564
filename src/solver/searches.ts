import type { Nearer, RoomFound } from "./room/index.js";

/** On what terms walls are searched together. */
export interface SearchTerms {
  /** What part of all looks may be taken. */
  readonly share: number;
  /** The plan's own layout, where a wish that it misses comes first; null where it is that which is searched for. */
  readonly nearer: NearerThan | null;
}

/** A layout that is searched for one that misses a wish by less. */
export interface NearerThan {
  /** The searches that it was laid by. */
  readonly searches: readonly RoomFound[];
  /** The wish's place in what they cost. */
  readonly place: number;
}

/** The terms of a plan's own layout. */
export const OWN_TERMS: SearchTerms = { share: 1, nearer: null };

/**
 * The searches of a layout, one after the other. As long as they come to what those of the known layout came to, each
 * is for the same walls as the one in its turn there, so that it may begin with what that one found.
 */
export class Searches {
  readonly all: RoomFound[] = [];

  constructor(private nearer: NearerThan | null) {}

  /** What the next search may begin with; null where nothing is known of its walls. */
  get next(): Nearer | null {
    const than = this.nearer?.searches[this.all.length];
    return than ? { than, place: this.nearer!.place } : null;
  }

  add(found: RoomFound): void {
    const known = this.next;
    this.all.push(found);
    if (known && !isKept(found, known.than)) this.part();
  }

  /** Says that from here on walls aren't those of the known layout. */
  part(): void {
    this.nearer = null;
  }
}

/** Whether a search found nothing but what was known. */
function isKept(found: RoomFound, known: RoomFound): boolean {
  return found.clusters.every((laid, i) => laid === known.clusters[i]);
}

import type { Picture } from "../service/index.js";

/** What the preview has been given of one plan. */
export interface Shown {
  /** The newest version: its findings and blocks are the ones that speak of the text as it stands. */
  readonly latest: Picture | null;
  /** The version that is drawn. */
  readonly drawn: Picture | null;
  /** Why no newer picture comes, when the plan's file is gone. */
  readonly gone: string | null;
}

export const NOTHING: Shown = { latest: null, drawn: null, gone: null };

/**
 * What is shown once a picture came in. An older version than the newest is dropped. One whose text
 * could not be understood whole leaves the last whole picture standing.
 */
export function withPicture(shown: Shown, picture: Picture): Shown {
  if (shown.latest && picture.version < shown.latest.version) return shown;
  const keep = !picture.whole && shown.drawn?.whole === true;
  return { latest: picture, drawn: keep ? shown.drawn : picture, gone: null };
}

/** The note over the picture, or null when there is nothing to say. */
export function noteOf({ latest, drawn, gone }: Shown): string | null {
  if (gone !== null) return gone;
  if (!latest || !drawn) return null;
  const notes: string[] = [];
  if (!latest.whole) notes.push(brokenNote(latest, drawn));
  if (drawn.simplified) {
    notes.push("This plan is too large to draw piece by piece: its courses are drawn as bands.");
  }
  return notes.length > 0 ? notes.join(" ") : null;
}

function brokenNote(latest: Picture, drawn: Picture): string {
  return drawn === latest
    ? "Part of the text could not be understood: what could be is drawn."
    : "Part of the text could not be understood: this is the last picture before.";
}

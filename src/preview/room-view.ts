import type { Picture } from "../service/index.js";

/** Which of a picture's two scenes is looked at: the walls as the plan has them, or the room unfolded. */
export class RoomView {
  /** Whether the room is shown unfolded. */
  isOn = false;
  #last: { readonly picture: Picture; readonly seen: Picture } | null = null;

  /** The picture as it is seen; the same one for the same picture, so that it is drawn once. */
  seen(picture: Picture): Picture {
    if (!this.isOn || !picture.room) return picture;
    if (this.#last?.picture !== picture) {
      this.#last = { picture, seen: { ...picture, scene: picture.room } };
    }
    return this.#last.seen;
  }
}

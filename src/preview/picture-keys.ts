/// <reference lib="dom" />
import type { PictureBox } from "../drawing/index.js";
import { actOfKey, type KeyAct, type KeySight, lookBy } from "./key-acts.js";
import type { Pointing } from "./pointing.js";
import type { Sight } from "./sight.js";
import { nearestWall } from "./view.js";

/** How the picture is seen, as far as keys change it or ask. */
export interface WalkSight extends KeySight, Pick<Sight, "scene" | "view"> {
  bringIn(box: PictureBox): void;
}

/** How the picture is pointed at by keys. */
export type KeyPointing = Pick<
  Pointing,
  "walking" | "walkedOver" | "startWalking" | "stopWalking" | "step" | "stepWall" | "select"
>;

/** What keys do on the picture: they change how it is seen, and walk from piece to piece. */
export class PictureKeys {
  constructor(
    private readonly sight: WalkSight,
    private readonly pointing: KeyPointing,
    /** The wall that is chosen to walk on; null: the nearest. */
    private readonly chosen: () => string | null,
    /** Hears where the piece is that is walked over. */
    private readonly walkedOver: (box: PictureBox) => void,
  ) {}

  press(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = actOfKey(event.key, event.shiftKey, this.pointing.walking);
    if (!act) return;
    event.preventDefault();
    if (!lookBy(act, this.sight)) this.#walkBy(act);
  }

  #walkBy(act: KeyAct): void {
    switch (act.act) {
      case "walk":
        this.#startWalking();
        this.#keepSeen();
        break;
      case "step":
        this.pointing.step(act.step);
        this.#keepSeen();
        break;
      case "wall":
        this.pointing.stepWall(act.by);
        this.#keepSeen();
        break;
      case "stop":
        this.pointing.stopWalking();
        break;
      case "select":
        this.pointing.select();
        break;
    }
  }

  #startWalking(): void {
    const { scene, view } = this.sight;
    if (!scene || !view) return;
    const name = this.chosen();
    const wall = scene.walls.find((each) => each.name === name) ?? nearestWall(scene.walls, view);
    if (wall) this.pointing.startWalking(wall, view);
  }

  #keepSeen(): void {
    const over = this.pointing.walkedOver;
    if (!over) return;
    this.sight.bringIn(over);
    this.walkedOver(over);
  }
}

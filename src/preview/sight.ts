/// <reference lib="dom" />
import type { PictureBox, Place, Scene } from "../drawing/index.js";
import { Glide } from "./glide.js";
import { recallView, type KeptView } from "./kept-view.js";
import type { Stage } from "./stage.js";
import * as views from "./view.js";
import type { View } from "./view.js";

/** How the stage's picture is looked at: what is drawn, from where, how near. */
export class Sight {
  readonly #glide = new Glide((view) => this.#look(view));
  #scene: Scene | null = null;
  #view: View | null = null;

  constructor(
    private readonly stage: Stage,
    /** What "fit" shows whole. */
    private readonly boxToFit: (scene: Scene) => PictureBox,
    private readonly looked: (view: View) => void,
  ) {}

  get scene(): Scene | null {
    return this.#scene;
  }

  get view(): View | null {
    return this.#view;
  }

  /** Draws a scene, seen as the one before it was, else as it was kept, else whole. */
  show(scene: Scene, kept: KeptView | null): void {
    const before = this.#scene;
    this.stage.show(scene);
    this.#scene = scene;
    if (before && this.#view) this.#view = views.carriedOver(this.#view, before, scene);
    else if (kept) this.#view = recallView(kept, scene);
    this.settle();
  }

  clear(): void {
    this.#glide.stop();
    this.stage.clear();
    this.#scene = null;
    this.#view = null;
  }

  /** After the picture or the room changed. */
  settle(): void {
    const { room } = this.stage;
    if (!this.#scene || room.width === 0 || room.height === 0) return;
    const box = this.boxToFit(this.#scene);
    this.#look(this.#view ? views.settled(this.#view, box, room) : views.fitWhole(box, room));
  }

  fit(hold: "whole" | "width"): void {
    if (!this.#scene) return;
    const box = this.boxToFit(this.#scene);
    const { room } = this.stage;
    this.#glideTo(hold === "whole" ? views.fitWhole(box, room) : views.fitWidth(box, room));
  }

  actualSize(): void {
    this.#change(views.actualSize);
  }

  panBy(dx: number, dy: number): void {
    this.#change((view) => views.pannedBy(view, dx, dy));
  }

  /** About a place of the window, or about the middle. */
  zoom(factor: number, client?: Place): void {
    const { room } = this.stage;
    const middle = { x: room.width / 2, y: room.height / 2 };
    const at = client ? this.stage.placeInRoom(client) : middle;
    this.#change((view) => views.zoomedAt(view, room, at, factor));
  }

  /** Brings a box of the picture into sight. */
  bringIn(box: PictureBox): void {
    this.#glideFrom((view) => views.bringIn(view, box, this.stage.room));
  }

  /** The same, as near as it takes to make the box out. */
  bringNear(box: PictureBox): void {
    this.#glideFrom((view) => views.bringNear(view, box, this.stage.room));
  }

  /** The picture's place under a place of the window; null when nothing is drawn. */
  placeUnder(client: Place): Place | null {
    if (!this.#view) return null;
    return views.toPicture(this.#view, this.stage.room, this.stage.placeInRoom(client));
  }

  /** Where the lower left corner of a box is in the room: 0 to 1 from its left and its top. */
  shareOfRoom({ left, bottom }: Pick<PictureBox, "left" | "bottom">): Place {
    const seen = views.seenBox(this.#view!, this.stage.room);
    return {
      x: (left - seen.left) / (seen.right - seen.left),
      y: (bottom - seen.top) / (seen.bottom - seen.top),
    };
  }

  #change(change: (view: View) => View): void {
    this.#glide.stop();
    if (this.#view) this.#look(change(this.#view));
  }

  #glideFrom(change: (view: View) => View): void {
    const view = this.#view && change(this.#view);
    if (view && view !== this.#view) this.#glideTo(view);
  }

  #glideTo(view: View): void {
    if (this.#view) this.#glide.to(this.#view, view);
  }

  #look(view: View): void {
    if (!this.#scene) return;
    this.#view = views.keptOver(view, this.#scene.view);
    this.stage.look(this.#view);
    this.looked(this.#view);
  }
}

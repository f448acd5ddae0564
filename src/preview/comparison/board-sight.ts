import type { PictureBox, Place } from "../../drawing/index.js";
import * as views from "../view.js";
import type { Size, View } from "../view.js";

/** What is looked at: a board, or a test. */
export interface Looked {
  /** What "fit" shows whole; null while nothing is drawn. */
  readonly box: PictureBox | null;
  readonly room: Size;
  readonly look: (view: View) => void;
  readonly placeInRoom: (client: Place) => Place;
}

/** How a board is looked at: from where, how near. */
export class BoardSight {
  #view: View | null = null;

  constructor(
    private readonly board: Looked,
    private readonly looked: (view: View) => void,
  ) {}

  /** Another wall, or another way to show it, is seen whole. */
  begin(): void {
    this.#view = null;
    this.settle();
  }

  /** After the picture or the room changed. */
  settle(): void {
    const { box, room } = this.board;
    if (!box || room.width === 0 || room.height === 0) return;
    this.#look(this.#view ? views.settled(this.#view, box, room) : views.fitWhole(box, room));
  }

  fit(hold: "whole" | "width"): void {
    const { box, room } = this.board;
    if (!box) return;
    this.#look(hold === "whole" ? views.fitWhole(box, room) : views.fitWidth(box, room));
  }

  actualSize(): void {
    if (this.#view) this.#look(views.actualSize(this.#view));
  }

  panBy(dx: number, dy: number): void {
    if (this.#view) this.#look(views.pannedBy(this.#view, dx, dy));
  }

  /** About a place of the window, or about the middle. */
  zoom(factor: number, client?: Place): void {
    if (!this.#view) return;
    const { room } = this.board;
    const middle = { x: room.width / 2, y: room.height / 2 };
    const at = client ? this.board.placeInRoom(client) : middle;
    this.#look(views.zoomedAt(this.#view, room, at, factor));
  }

  #look(view: View): void {
    const { box } = this.board;
    if (!box) return;
    this.#view = views.keptOver(view, box);
    this.board.look(this.#view);
    this.looked(this.#view);
  }
}

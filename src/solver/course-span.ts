import type { Nm } from "../measure/index.js";
import type { Box } from "./box.js";
import { rangeBetween } from "./chain.js";
import { classifyBox } from "./classify.js";
import { courseBottom, courseShift, firstPast, lastBefore, moduleAcross } from "./lattice.js";
import type { Lattice, Region } from "./solved.js";

/** One course as it runs through the region: which columns it has and which of them are whole across. */
export class CourseSpan {
  /** The bottom and top of its whole tiles. */
  readonly bottom: Nm;
  readonly top: Nm;
  /** The left edge of its column 0. */
  readonly origin: Nm;
  /** The columns that may have a piece. */
  readonly first: number;
  readonly last: number;
  /** The columns that the sides and what is hidden leave whole across. */
  readonly wholeFrom: number;
  readonly wholeTo: number;
  /** Whether bottom and top cut every tile of the course alike, or not at all. */
  readonly isLevel: boolean;
  /** The bottom and top of its tiles when they are cut alike, and the cut. */
  readonly rowBottom: Nm;
  readonly rowTop: Nm;
  readonly rowCut: number;
  /** Whether it is cut alike and ends square: any of its tiles that nothing else meets is a plain rectangle, `rowWithin`. */
  readonly isSquare: boolean;
  private readonly left: Nm;
  private readonly right: Nm;

  constructor(region: Region, lattice: Lattice, number: number) {
    const { bounds } = region;
    const face = lattice.face.across;
    const module = moduleAcross(lattice);
    this.bottom = courseBottom(lattice, number);
    this.top = this.bottom + lattice.face.up;
    this.origin = lattice.x + courseShift(lattice, number);
    const left = rangeBetween(region.left, this.bottom, this.top);
    const right = rangeBetween(region.right, this.bottom, this.top);
    this.first = firstPast(this.origin, face, module, left.low);
    this.last = lastBefore(this.origin, module, right.high);
    const hiddenTo =
      region.hiddenLeft && rangeBetween(region.hiddenLeft, this.bottom, this.top).high;
    const hiddenFrom =
      region.hiddenRight && rangeBetween(region.hiddenRight, this.bottom, this.top).low;
    const innerLeft = Math.max(left.high, hiddenTo ?? left.high);
    const innerRight = Math.min(right.low, hiddenFrom ?? right.low);
    this.wholeFrom = Math.ceil((innerLeft - this.origin) / module);
    this.wholeTo = Math.floor((innerRight - face - this.origin) / module);
    const low = rangeBetween(region.bottom, bounds.left, bounds.right);
    const high = rangeBetween(region.top, bounds.left, bounds.right);
    this.isLevel =
      !this.reachesHidden(region) &&
      (low.high <= this.bottom || low.low === low.high) &&
      (high.low >= this.top || high.low === high.high);
    this.rowBottom = Math.max(this.bottom, low.high);
    this.rowTop = Math.min(this.top, high.low);
    this.rowCut = classifyBox(false, this.rowTop - this.rowBottom < lattice.face.up);
    this.isSquare = this.isLevel && left.low === left.high && right.low === right.high;
    this.left = left.low;
    this.right = right.low;
  }

  /** What of a tile lies within the course's row and its ends, where it is square; null for nothing. */
  rowWithin(tile: Box): Box | null {
    const left = Math.max(tile.left, this.left);
    const right = Math.min(tile.right, this.right);
    if (left >= right || this.rowBottom >= this.rowTop) return null;
    return { left, bottom: this.rowBottom, right, top: this.rowTop };
  }

  /** Whether other tile covers some of its pieces from below or above. */
  private reachesHidden({ hiddenBottom, hiddenTop }: Region): boolean {
    return (
      (hiddenBottom?.value.some((value) => value > this.bottom) ?? false) ||
      (hiddenTop?.value.some((value) => value < this.top) ?? false)
    );
  }
}

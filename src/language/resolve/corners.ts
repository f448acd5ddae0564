import type { Edge, Meeting, Wall } from "../../model/index.js";
import type { PlanCode } from "./plan-code.js";
import type { Report } from "./report.js";
import { placeOf } from "./report.js";
import type { WallDrafts } from "./wall-draft.js";

type EndSide = "left" | "right";
type Corner = Meeting & { readonly kind: "corner" };

const END_SIDES: readonly EndSide[] = ["left", "right"];

/**
 * Walls are drawn as one stands before them, so a wall's left meets the other's right. Tells every
 * corner that the other wall contradicts; each corner once, at the later of its two statements.
 */
export function checkCorners(walls: readonly Wall[], all: WallDrafts, report: Report): void {
  const byName = new Map(walls.map((wall) => [wall.name, wall]));
  const position = new Map(walls.map((wall, i) => [wall, i]));
  for (const wall of walls) {
    for (const side of END_SIDES) {
      const { meets } = wall.edges[side];
      const other = meets.kind === "corner" ? byName.get(meets.wall) : undefined;
      if (meets.kind !== "corner" || !other) continue;
      const isLater = position.get(wall)! > position.get(other)!;
      new CornerCheck(wall, side, meets, other, isLater, all, report).run();
    }
  }
}

class CornerCheck {
  private readonly answer: EndSide;

  constructor(
    private readonly wall: Wall,
    private readonly side: EndSide,
    private readonly meets: Corner,
    private readonly other: Wall,
    private readonly isLater: boolean,
    private readonly all: WallDrafts,
    private readonly report: Report,
  ) {
    this.answer = side === "left" ? "right" : "left";
  }

  run(): void {
    const { wall, other, answer, side } = this;
    const answering = other.edges[answer];
    if (this.names(answering)) this.compareLaps(answering);
    else if (this.names(other.edges[side])) this.tellWrongSide(other.edges[side]);
    else if (this.isTold(answering)) return;
    else if (answering.stated) this.tellOther(answering);
    else {
      const message = `found that \`${other.name}\` doesn't say what its ${answer} side meets, wanted \`${answer} corner ${wall.name} ${this.wantedLap()}\` there`;
      const related = [placeOf(other.origin, `the wall \`${other.name}\``)];
      this.tell("plan/corner-unanswered", message, related, "warning");
    }
  }

  private names({ meets }: Edge): boolean {
    return meets.kind === "corner" && meets.wall === this.wall.name;
  }

  private wantedLap(): "under" | "over" {
    return this.meets.lap === "under" ? "over" : "under";
  }

  /** Whether the other wall's line can't be understood, or names a wall that isn't there. */
  private isTold({ meets }: Edge): boolean {
    const { parts } = this.all.names.find(this.other.name)!.value!;
    const written = parts.all("edge").find(({ side }) => side === this.answer);
    if (!written) return parts.isBroken(this.answer);
    return written.meets.kind === "corner" && meets.kind !== "corner";
  }

  private compareLaps(answering: Edge): void {
    const { other, meets, answer } = this;
    const { lap } = answering.meets as Corner;
    if (lap !== meets.lap || !this.isLater) return;
    const message = `found both walls \`${lap}\` at this corner, wanted one \`under\` and one \`over\``;
    const related = [
      placeOf(answering.origin, `\`${other.name}\` says \`${answer} corner … ${lap}\``),
    ];
    this.tell("plan/corner-lap", message, related);
  }

  private tellWrongSide(claimed: Edge): void {
    if (!this.isLater) return;
    const { side, other, answer } = this;
    const message = `found the ${side} of both walls at this corner, wanted this wall's ${side} to meet the ${answer} of \`${other.name}\``;
    const related = [placeOf(claimed.origin, `the ${side} of \`${other.name}\``)];
    this.tell("plan/corner-side", message, related);
  }

  private tellOther(answering: Edge): void {
    const { wall, other, answer } = this;
    const { meets } = answering;
    const found = meets.kind === "corner" ? `a corner with \`${meets.wall}\`` : `\`${meets.kind}\``;
    const message = `found that the ${answer} of \`${other.name}\` meets ${found}, wanted it to meet \`${wall.name}\``;
    const related = [placeOf(answering.origin, `the ${answer} of \`${other.name}\``)];
    this.tell("plan/corner-other", message, related);
  }

  private tell(
    code: PlanCode,
    message: string,
    related: ReturnType<typeof placeOf>[],
    severity: "error" | "warning" = "error",
  ): void {
    const { wall, side, report } = this;
    report.tellAt(code, wall.edges[side].origin, message, { severity, wall: wall.name, related });
  }
}

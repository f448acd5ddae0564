import { formatLength } from "../../measure/index.js";
import { type CornerMeeting, type Edge, isCorner, type Wall } from "../../model/index.js";
import type { PlanCode } from "./plan-code.js";
import type { Report } from "./report.js";
import { placeOf } from "./report.js";
import type { WallDrafts } from "./wall-draft.js";

type EndSide = "left" | "right";

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
      const other = isCorner(meets) ? byName.get(meets.wall) : undefined;
      if (!isCorner(meets) || !other) continue;
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
    private readonly meets: CornerMeeting,
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
      const message = `found that \`${other.name}\` doesn't say what its ${answer} side meets, wanted \`${answer} ${this.meets.kind} ${wall.name} ${this.wantedLap()}\` there`;
      const related = [placeOf(other.origin, `the wall \`${other.name}\``)];
      this.tell("plan/corner-unanswered", message, related, "warning");
    }
  }

  private names({ meets }: Edge): boolean {
    return isCorner(meets) && meets.wall === this.wall.name;
  }

  private wantedLap(): CornerMeeting["lap"] {
    const { lap } = this.meets;
    if (lap === "mitre") return "mitre";
    return lap === "under" ? "over" : "under";
  }

  /** Whether the other wall's line can't be understood, or names a wall that isn't there. */
  private isTold({ meets }: Edge): boolean {
    const { parts } = this.all.names.find(this.other.name)!.value!;
    const written = parts.all("edge").find(({ side }) => side === this.answer);
    if (!written) return parts.isBroken(this.answer);
    return "wall" in written.meets && !isCorner(meets);
  }

  private compareLaps(answering: Edge): void {
    const { other, meets, answer } = this;
    const found = answering.meets as CornerMeeting;
    if (!this.isLater) return;
    const related = [placeOf(answering.origin, `the ${answer} of \`${other.name}\``)];
    if (found.kind !== meets.kind) {
      const name = { corner: "an inside", outside: "an outside" };
      const message = `found ${name[meets.kind]} corner here and ${name[found.kind]} one at \`${other.name}\`, wanted one corner`;
      this.tell("plan/corner-lap", message, related);
    } else if (found.lap !== this.wantedLap()) this.tellLaps(found, answering);
    else if (meets.kind === "outside") this.compareJoints(answering);
  }

  private tellLaps({ lap }: CornerMeeting, answering: Edge): void {
    const { other, meets, answer } = this;
    const found = lap === meets.lap ? `both walls \`${lap}\`` : `\`${meets.lap}\` and \`${lap}\``;
    const mitre = meets.kind === "outside" ? ", or `mitre` at both" : "";
    const message = `found ${found} at this corner, wanted one \`under\` and one \`over\`${mitre}`;
    const related = [
      placeOf(answering.origin, `\`${other.name}\` says \`${answer} ${meets.kind} … ${lap}\``),
    ];
    this.tell("plan/corner-lap", message, related);
  }

  /** An outside corner has one joint: the wall under has it, or half of it each wall of a mitre. */
  private compareJoints(answering: Edge): void {
    const { wall, side, other, answer, meets } = this;
    const own = wall.edges[side].joint;
    const { joint } = answering;
    const needn = meets.lap === "over" ? !own : meets.lap === "under" && !joint;
    if (needn || (own?.kind === joint?.kind && own?.width === joint?.width)) return;
    const { units } = this.all.names.find(wall.name)!.value!.scope;
    const [here, there] = [own, joint].map((each) =>
      each ? `\`${each.kind} ${formatLength(each.width, units)}\`` : "no joint",
    );
    const message = `found ${here!} here and ${there!} at \`${other.name}\`, wanted one joint for both walls of an outside corner`;
    this.tell("plan/corner-joint", message, [
      placeOf(answering.origin, `the ${answer} of \`${other.name}\``),
    ]);
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
    const found = isCorner(meets) ? `a corner with \`${meets.wall}\`` : `\`${meets.kind}\``;
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

import { formatLength } from "../../measure/index.js";
import type { AcrossStart, Bond, Centre, Lay, Opening, Tile, UpStart } from "../../model/index.js";
import { didYouMean } from "../nearest.js";
import type {
  AcrossStatement,
  LayPart,
  LayStatement,
  SetStatement,
  SoftJointStatement,
  UpStatement,
  Word,
} from "../syntax.js";
import { resolveAllows } from "./allows.js";
import { resolveCarried } from "./carried.js";
import { lengthOf } from "./lengths.js";
import type { ResolvedOpenings } from "./openings.js";
import { Parts } from "./parts.js";
import { type PlainLay, placeLays, type ReadLay } from "./place-lays.js";
import { ratioOf } from "./ratio.js";
import { placeOf } from "./report.js";
import { resolveSoftJoints } from "./soft-joints.js";
import type { WallDraft, WallDrafts } from "./wall-draft.js";

/** How a wall is laid; a lay of which not enough can be understood is left out. */
export function resolveLays(draft: WallDraft, all: WallDrafts, openings: ResolvedOpenings): Lay[] {
  const statements = draft.parts.all("lay");
  const onWall = setOnWall(draft, statements.length);
  const softOnWall = softJointsOnWall(draft, statements.length);
  const read = statements.flatMap((statement): ReadLay[] => {
    const reader = new LayReader(statement, draft, all, openings);
    const lay = reader.resolve();
    const set = [...onWall, ...reader.parts.all("set")];
    if (!lay) return [];
    const soft = resolveSoftJoints([...softOnWall, ...reader.parts.all("soft-joint")], draft);
    return [{ statement, parts: reader.parts, lay: { ...lay, soft }, set }];
  });
  return placeLays(read, draft);
}

/** What the wall says is set: of its one lay. Where it has several, the lay has to say it. */
function setOnWall(draft: WallDraft, lays: number): readonly SetStatement[] {
  const statements = draft.parts.all("set");
  if (lays <= 1) return statements;
  for (const { head } of statements) {
    const message =
      "found `set` in a wall of several lays, wanted it in the lay whose courses are set";
    draft.scope.report.tell("plan/set-courses", head, message, { wall: draft.name });
  }
  return [];
}

/** The soft joints that the wall states: in its one lay. */
function softJointsOnWall(draft: WallDraft, lays: number): readonly SoftJointStatement[] {
  const statements = draft.parts.all("soft-joint");
  if (lays <= 1) return statements;
  for (const { head } of statements) {
    const message =
      "found `movement joint` in a wall of several lays, wanted it in the lay whose joint is soft";
    draft.scope.report.tell("plan/soft-joint", head, message, { wall: draft.name });
  }
  return [];
}

/** Resolves one `lay` block. */
class LayReader {
  readonly parts: Parts<LayPart>;

  constructor(
    private readonly statement: LayStatement,
    private readonly draft: WallDraft,
    private readonly all: WallDrafts,
    private readonly openings: ResolvedOpenings,
  ) {
    const many = ["covers", "set", "soft-joint"] as const;
    this.parts = new Parts(statement.body, draft.scope.report, draft.name, many);
  }

  resolve(): Omit<PlainLay, "soft"> | null {
    const { statement, draft } = this;
    const { report } = draft.scope;
    const tile = this.tile();
    const bond = this.bond();
    const joint = this.joint();
    const across = this.parts.first("across");
    const up = this.parts.first("up");
    const starts = { across: across ? this.across(across) : null, up: up ? this.up(up) : null };
    const allows = resolveAllows(statement.body, report);
    if (!tile || !bond || !joint) return null;
    return { tile, bond, joint, ...starts, allows, origin: report.origin(statement) };
  }

  private tile(): Tile | null {
    const { scope, name: wall } = this.draft;
    const { name } = this.statement;
    if (!name) return null;
    const declared = scope.tiles.find(name.text);
    if (declared) return declared.value;
    if (scope.trims.find(name.text)) {
      const message = `found the trim \`${name.text}\`, wanted a tile`;
      scope.report.tell("plan/name-unknown", name, message, { wall });
    } else scope.tiles.tellUnknown(name, scope.report, wall);
    return null;
  }

  private bond(): Bond | null {
    const message = "found no `bond`, wanted `bond stack` or one such as `bond running 1/2`";
    const statement = this.parts.need("bond", this.statement, message);
    if (!statement) return null;
    const { offset } = statement;
    if (!offset) return { kind: "stack" };
    const { quantity } = offset;
    if (!quantity) return null;
    const ratio = quantity.unit === null ? ratioOf(quantity.amount) : null;
    if (ratio && ratio.p > 0 && ratio.p < ratio.q) return { kind: "running", ...ratio };
    this.draft.scope.report.tell(
      "plan/bond",
      offset,
      "found no part of a module, wanted a fraction between 0 and 1, such as 1/2 or 1/3",
      { wall: this.draft.name },
    );
    return null;
  }

  private joint(): Lay["joint"] | null {
    const { scope, name: wall } = this.draft;
    const message = "found no `joint`, wanted one, such as `joint 1/16`";
    const statement = this.parts.need("joint", this.statement, message);
    if (!statement) return null;
    const min = lengthOf(statement.min, "not-negative", scope, wall);
    const max = statement.max ? lengthOf(statement.max, "not-negative", scope, wall) : min;
    if (min === null || max === null) return null;
    const origin = scope.report.origin(statement);
    if (min <= max) return { min, max, origin };
    const [from, to] = [min, max].map((nm) => formatLength(nm, scope.units));
    const reversed = `found a range from ${from!} to ${to!}, wanted the narrower joint first`;
    scope.report.tell("plan/joint-reversed", statement.max!, reversed, { wall });
    return { min: max, max: min, origin };
  }

  private across({ choice }: AcrossStatement): AcrossStart | null {
    if (choice.kind === "full-tile") return choice;
    if ("wall" in choice) return resolveCarried(choice, this.draft, this.all);
    const centre = this.centre(choice);
    return centre && { kind: choice.what, centre };
  }

  private centre(
    choice: Extract<AcrossStatement["choice"], { kind: "centred-on" | "centred-at" }>,
  ): Centre | null {
    const { scope, name: wall } = this.draft;
    if (choice.kind === "centred-at") {
      const x = lengthOf(choice.x, "any", scope, wall);
      return x === null ? null : { on: "place", x };
    }
    if (choice.name.text === "wall") return { on: "wall" };
    const opening = this.opening(choice.name, ["wall"]);
    return opening && { on: "opening", opening };
  }

  private up({ choice }: UpStatement): UpStart | null {
    const { scope, name: wall } = this.draft;
    if (choice.kind === "full-course") return choice;
    if (choice.kind === "joint") {
      const y = lengthOf(choice.y, "any", scope, wall);
      return y === null ? null : { kind: "joint", y };
    }
    const opening = this.opening(choice.name, []);
    return opening && { kind: "at-opening", relation: choice.relation, opening };
  }

  /** An opening of this wall; null where it was left out, or there is none (which is told). */
  private opening(name: Word, otherWords: readonly string[]): Opening | null {
    const { scope, name: wall } = this.draft;
    const declared = this.openings.names.find(name.text);
    if (declared) return declared.value;
    const elsewhere = this.all.wallOfOpening.get(name.text);
    if (elsewhere !== undefined) {
      const other = this.all.names.find(elsewhere)!;
      const message = `found \`${name.text}\`, which is in the wall \`${elsewhere}\`, wanted an opening of this wall`;
      const related = [placeOf(other.origin, `the wall \`${elsewhere}\``)];
      scope.report.tell("plan/opening-elsewhere", name, message, { wall, related });
      return null;
    }
    const words = [...otherWords, ...this.openings.names.keys()];
    const message = `found no opening called \`${name.text}\` in this wall${didYouMean(name.text, words)}`;
    scope.report.tell("plan/name-unknown", name, message, { wall });
    return null;
  }
}

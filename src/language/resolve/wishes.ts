import { formatLength } from "../../measure/index.js";
import {
  isCorner,
  type Opening,
  type Wall,
  type WallOpening,
  type Wanted,
  type Wish,
} from "../../model/index.js";
import { didYouMean } from "../nearest.js";
import type { PreferStatement, WishStatement, Word, WrittenWish } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import { joinWords } from "../wanted.js";
import type { Scope } from "./scope.js";

/** What is wanted of the plan's walls, the most wanted first: a wall's own wishes go before the room's. */
export function resolveWishes(
  walls: readonly Wall[],
  ownOf: (wall: string) => PreferStatement | undefined,
  room: PreferStatement | undefined,
  scope: Scope,
): Wish[] {
  const own = walls.flatMap((wall) => {
    const block = ownOf(wall.name);
    return block ? new WishReader(block, walls, wall, scope).wishes() : [];
  });
  return [...own, ...(room ? new WishReader(room, walls, null, scope).wishes() : [])];
}

/** Reads one `prefer` block; `own` is the wall that it stands in. */
class WishReader {
  constructor(
    private readonly block: PreferStatement,
    private readonly walls: readonly Wall[],
    private readonly own: Wall | null,
    private readonly scope: Scope,
  ) {}

  wishes(): Wish[] {
    const { block, scope } = this;
    if (block.body.length === 0) {
      const message = "found no wish, wanted one a line, such as `courses meet` or `few cuts`";
      this.tell(block.head, message, "warning");
    }
    const first = new Map<string, WishStatement>();
    return block.body.flatMap((statement): Wish[] => {
      if (statement.kind === "broken") return [];
      const wanted = this.wanted(statement);
      if (!wanted) return [];
      const earlier = first.get(JSON.stringify(wanted));
      if (earlier) {
        const related = [scope.report.place(earlier.head, "the first one")];
        const message = "found the same wish again, wanted it once: the first one counts";
        scope.report.tell("plan/said-twice", statement.head, message, {
          wall: this.own?.name,
          related,
        });
        return [];
      }
      first.set(JSON.stringify(wanted), statement);
      return [{ wanted, wall: this.own?.name ?? null, origin: scope.report.origin(statement) }];
    });
  }

  private wanted(statement: WishStatement): Wanted | null {
    const { wish } = statement;
    switch (wish.wanted) {
      case "courses-meet":
        return this.atCorners(statement, "courses meet", { kind: "courses-meet" });
      case "bond-goes-on":
        return this.atCorners(statement, "bond goes on", { kind: "bond-goes-on" });
      case "centre": {
        const on = this.opening(wish.opening);
        return on && { kind: "centre", on };
      }
      case "no-cut":
        return this.noCut(wish);
      case "whole-courses":
        return this.wholeCourses(wish);
      case "equal-ends":
      case "few-cuts":
        return { kind: wish.wanted };
    }
  }

  /** A wish for corners, where there is one. */
  private atCorners(statement: WishStatement, words: string, wanted: Wanted): Wanted | null {
    const walls = this.own ? [this.own] : this.walls;
    const hasCorner = walls.some(({ edges: { left, right } }) =>
      [left, right].some(({ meets }) => isCorner(meets)),
    );
    if (hasCorner) return wanted;
    const where = this.own ? "wall" : "room";
    const message = `found \`${words}\` in a ${where} without a corner, wanted one, such as \`left corner back under\``;
    this.tell(statement.head, message, "warning");
    return null;
  }

  private noCut({ under }: WrittenWish & { wanted: "no-cut" }): Wanted | null {
    const nm = lengthOf(under, "positive", this.scope, this.own?.name);
    if (nm === null) return null;
    const walls = this.own ? [this.own] : this.walls;
    const most = Math.max(
      ...walls.flatMap(({ lays }) => lays.flatMap(({ tile }) => Object.values(tile.face))),
    );
    if (most > 0 && nm > most) {
      const [found, face] = [nm, most].map((each) => formatLength(each, this.scope.units));
      const message = `found ${found!}, wanted at most the tile's ${face!}: every cut is under that`;
      this.tell(under, message, "error");
      return null;
    }
    return { kind: "no-cut", under: nm };
  }

  private wholeCourses(wish: WrittenWish & { wanted: "whole-courses" }): Wanted | null {
    if (!("opening" in wish)) return { kind: "whole-at-side", at: wish.at };
    const of = this.opening(wish.opening);
    if (!of) return null;
    const opening = this.openingsCalled(wish.opening.text)[0]!.opening;
    if (opening.reaches !== "floor" || wish.at === "head") {
      return { kind: "whole-at-opening", at: wish.at, of };
    }
    this.tell(
      wish.opening,
      `found the sill of \`${of.opening}\`, which stands on the floor, wanted its head`,
      "error",
    );
    return null;
  }

  /** The opening of this wall, or of the one wall that has it; what can't be found is told. */
  private opening(name: Word): WallOpening | null {
    const found = this.openingsCalled(name.text);
    const [first, second] = found;
    if (first && !second) return { wall: first.wall.name, opening: name.text };
    const { report } = this.scope;
    if (second) {
      const walls = found.map(({ wall }) => `\`${wall.name}\``);
      const message = `found \`${name.text}\`, which the walls ${joinWords(walls).replace(" or ", " and ")} have, wanted the wish in its wall's own \`prefer\``;
      this.tell(name, message, "error");
      return null;
    }
    const elsewhere = this.walls.find(({ openings }) =>
      openings.some((each) => each.name === name.text),
    );
    if (this.own && elsewhere) {
      const message = `found \`${name.text}\`, which is in the wall \`${elsewhere.name}\`, wanted an opening of this wall`;
      report.tell("plan/opening-elsewhere", name, message, { wall: this.own.name });
      return null;
    }
    const known = (this.own ? [this.own] : this.walls).flatMap(({ openings }) => openings);
    const guess = didYouMean(
      name.text,
      known.map((each) => each.name),
    );
    const message = `found no opening called \`${name.text}\` in this ${this.own ? "wall" : "plan"}${guess}`;
    report.tell("plan/name-unknown", name, message, { wall: this.own?.name });
    return null;
  }

  private openingsCalled(name: string): { wall: Wall; opening: Opening }[] {
    const walls = this.own ? [this.own] : this.walls;
    return walls.flatMap((wall) =>
      wall.openings.filter((each) => each.name === name).map((opening) => ({ wall, opening })),
    );
  }

  private tell(
    at: Parameters<Scope["report"]["tell"]>[1],
    message: string,
    severity: "error" | "warning",
  ): void {
    this.scope.report.tell("plan/wish", at, message, { severity, wall: this.own?.name });
  }
}

import { NM_PER, toNanometres } from "../measure/index.js";
import type { Span, Syntax } from "../language/index.js";
import type { Origin, Position, SourceRange } from "../model/index.js";
import type { SoftRun, SolvedWall } from "../solver/index.js";
import type { DocumentState } from "./document-state.js";
import type { Figures } from "./figures.js";
import { hoverLay } from "./hover-lay.js";
import { hoverLength, hoverLet } from "./hover-length.js";
import { hoverHole, hoverOpening } from "./hover-opening.js";
import { hoverRule } from "./hover-rule.js";
import { hoverSoft } from "./hover-soft.js";
import { hoverTile, hoverTrim } from "./hover-stock.js";
import { hoverWall } from "./hover-wall.js";
import { keywordHelp } from "./keywords.js";
import { nameAt, type NamePlace, namesOf } from "./names.js";
import { expressionsOf, leavesOf, statementsAt } from "./walk-tree.js";
import { wordAt } from "./word-at.js";

/** What is told of a place of the text. */
export interface Hover {
  readonly range: SourceRange;
  /** Markdown; what people wrote is escaped in it. */
  readonly text: string;
}

/** What stands at a place, with the figures it comes to; null where there is nothing to tell. */
export function hoverAt(state: DocumentState, position: Position, figures: Figures): Hover | null {
  return new Hovering(state, state.tree.lines.offset(position), figures).find();
}

class Hovering {
  private readonly path: readonly Syntax.Statement[];

  constructor(
    private readonly state: DocumentState,
    private readonly offset: number,
    private readonly figures: Figures,
  ) {
    this.path = statementsAt(state.tree, offset);
  }

  find(): Hover | null {
    const statement = this.path.at(-1);
    if (!statement || this.isInComment()) return null;
    return (
      this.rule(statement) ??
      this.name() ??
      this.literal(statement) ??
      this.block(statement) ??
      this.keyword(statement)
    );
  }

  private isInComment(): boolean {
    const { text } = this.state.tree;
    const start = text.lastIndexOf("\n", this.offset - 1) + 1;
    return text
      .slice(start, this.offset)
      .replace(/"[^"]*"/g, "")
      .includes("#");
  }

  private tell(span: Span, text: string | null | undefined): Hover | null {
    return text ? { range: this.state.tree.lines.range(span), text } : null;
  }

  private holds({ start, end }: Span): boolean {
    return start <= this.offset && this.offset <= end;
  }

  private rule(statement: Syntax.Statement): Hover | null {
    if (statement.kind !== "allow" || !this.holds(statement.code)) return null;
    return this.tell(statement.code, hoverRule(statement.code.text));
  }

  private name(): Hover | null {
    const name = nameAt(namesOf(this.state.tree), this.offset);
    return name && this.tell(name.word, this.aboutName(name));
  }

  private aboutName({ kind, word, wall }: NamePlace): string | null | undefined {
    const { plan, solved, lets } = this.state.outcome;
    const { figures } = this;
    const inWall = solved.walls.find((each) => each.wall.name === wall);
    switch (kind) {
      case "let":
        return lets.has(word.text) ? hoverLet(word.text, lets.get(word.text)!, plan.units) : null;
      case "tile": {
        const lay = this.layAt();
        if (lay) return lay;
        const tile = plan.tiles.find(({ name }) => name === word.text);
        return tile && hoverTile(tile, solved, figures);
      }
      case "trim": {
        const trim = plan.trims.find(({ name }) => name === word.text);
        return trim && hoverTrim(trim, solved, figures);
      }
      case "wall": {
        const found = solved.walls.find((each) => each.wall.name === word.text);
        return found && hoverWall(found, figures);
      }
      case "opening": {
        const opening = inWall?.wall.openings.find(({ name }) => name === word.text);
        return opening && hoverOpening(inWall!, opening, figures);
      }
      case "hole": {
        const hole = inWall?.wall.holes.find(({ name }) => name === word.text);
        return hole && hoverHole(inWall!, hole, figures);
      }
    }
  }

  /** The lay whose heading the place is in. */
  private layAt(): string | null {
    const statement = this.path.at(-1);
    if (statement?.kind !== "lay") return null;
    // What is set of a lay and what goes on over it are stated in one place.
    const found = this.solvedOf((wall) => {
      const parts = wall.lays.filter(({ lay }) => this.isAt(lay.origin, statement));
      return parts.length > 0 ? parts : undefined;
    });
    return found && hoverLay(found, this.figures);
  }

  private softAt(statement: Syntax.Statement): string | null {
    const isStated = ({ origin }: SoftRun) => this.isAt(origin, statement);
    return this.solvedOf((wall) => hoverSoft(wall, isStated, this.figures) ?? undefined);
  }

  private solvedOf<Found>(find: (wall: SolvedWall) => Found | undefined): Found | null {
    for (const wall of this.state.outcome.solved.walls) {
      const found = find(wall);
      if (found) return found;
    }
    return null;
  }

  private isAt({ file, range: { start } }: Origin, statement: Span): boolean {
    const place = this.state.tree.lines.position(statement.start);
    return (
      file === this.state.document.file &&
      start.line === place.line &&
      start.character === place.character
    );
  }

  private literal(statement: Syntax.Statement): Hover | null {
    if (PLAIN_NUMBERS.includes(statement.kind)) return null;
    for (const expression of expressionsOf(statement)) {
      for (const leaf of leavesOf(expression)) {
        if (leaf.kind !== "literal" || !this.holds(leaf) || !leaf.quantity) continue;
        const { units } = this.state.outcome.plan;
        const nm = toNanometres(leaf.quantity, units);
        return nm === null || nm > MOST_SHOWN ? null : this.tell(leaf, hoverLength(nm, units));
      }
    }
    return null;
  }

  /** A block's keyword tells of the block. */
  private block(statement: Syntax.Statement): Hover | null {
    const keyword = this.keywordSpan(statement);
    if (!keyword || !this.holds(keyword)) return null;
    const { figures } = this;
    switch (statement.kind) {
      case "wall": {
        const found = this.solvedOf((wall) =>
          this.isAt(wall.wall.origin, statement) ? wall : undefined,
        );
        return found && this.tell(keyword, hoverWall(found, figures));
      }
      case "lay":
        return this.tell(keyword, this.layAt());
      case "soft-joint":
      case "between":
        return this.tell(keyword, this.softAt(statement));
      case "opening":
        return this.tell(
          keyword,
          this.solvedOf((wall) => {
            const opening = wall.wall.openings.find(({ origin }) => this.isAt(origin, statement));
            return opening && hoverOpening(wall, opening, figures);
          }),
        );
      default:
        return null;
    }
  }

  private keywordSpan(statement: Syntax.Statement): Span | null {
    const { start } = statement;
    const word = wordAt(this.state.tree.text, start);
    return word.end > word.start ? word : null;
  }

  private keyword(statement: Syntax.Statement): Hover | null {
    const { text } = this.state.tree;
    const word = wordAt(text, this.offset);
    if (word.start === word.end || isQuoted(text, word.start)) return null;
    const kind = statement.kind === "broken" ? statement.meant : statement.kind;
    return this.tell(word, keywordHelp(text.slice(word.start, word.end), kind));
  }
}

/** The offset of a bond and numbers of pieces are no lengths. */
const PLAIN_NUMBERS: readonly Syntax.Statement["kind"][] = ["bond", "box", "spares"];

/** Past this a length in other units tells nobody anything (1 km). */
const MOST_SHOWN = 1000 * NM_PER.m;

function isQuoted(text: string, offset: number): boolean {
  const line = text.slice(text.lastIndexOf("\n", offset - 1) + 1, offset);
  // A quote right behind a digit is the inch mark.
  return line.replace(/\d"/g, "").split('"').length % 2 === 0;
}

import type { Origin, Supplies } from "../../model/index.js";
import type { Word } from "../syntax.js";
import type { Report } from "./report.js";
import { placeOf } from "./report.js";

type Kind = keyof Supplies;

const KINDS: readonly Kind[] = ["saw", "mortar", "grout", "sealant"];

/** Two used files that say something of the same kind. */
interface Contest {
  readonly kind: Kind;
  readonly use: Word;
  readonly first: Origin;
}

/** What a plan states once, in its own text or in a file that it uses; its own words go before those of a used file. */
export class Shelf {
  private held: Supplies = { saw: null, mortar: null, grout: null, sealant: null };
  private readonly own = new Set<Kind>();
  private readonly contests: Contest[] = [];

  get supplies(): Supplies {
    return this.held;
  }

  put<K extends Kind>(kind: K, supply: NonNullable<Supplies[K]>): void {
    this.held = { ...this.held, [kind]: supply };
    this.own.add(kind);
  }

  /** Brings what a used file has. Of two used files the first one's stays. */
  bring(from: Shelf, use: Word): void {
    for (const kind of KINDS) {
      const first = this.held[kind];
      const brought = from.held[kind];
      if (!brought) continue;
      if (!first) this.held = { ...this.held, [kind]: brought };
      // The same statement may come by two ways.
      else if (first.origin.file !== brought.origin.file) {
        this.contests.push({ kind, use, first: first.origin });
      }
    }
  }

  /** Where the file states the kind itself, nothing is left to contest. */
  tellContested(report: Report): void {
    for (const { kind, use, first } of this.contests) {
      if (this.own.has(kind)) continue;
      const message = `found \`${kind}\` in \`${use.text}\` too, wanted it in one used file, or in this plan`;
      report.tell("plan/said-twice", use, message, { related: [placeOf(first, "the first one")] });
    }
  }
}

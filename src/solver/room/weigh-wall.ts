import { type Start, weighQuickly } from "../choose/weigh.js";
import type { Field } from "../choose/field.js";
import type { Score } from "../solved.js";
import { compareCosts, type Cost } from "./cost.js";
import { costOf, scoreIn } from "./wanting.js";
import type { Fields, WallFields } from "./wall-fields.js";

/** What a wall costs in one layout, rank by rank; null as soon as it is sure to cost more than the bar. */
export function weighWall(
  fields: WallFields,
  at: Fields,
  start: Start,
  bar: Cost | null,
): Cost | null {
  return new Weighing(fields, at, start, bar).cost();
}

class Weighing {
  private readonly missed = new Map<number, number>();
  /** Whether what is known so far costs just as much as the bar. */
  private isLevel: boolean;
  private score: Score | null = null;

  constructor(
    private readonly fields: WallFields,
    private readonly at: Fields,
    private readonly start: Start,
    private readonly bar: Cost | null,
  ) {
    this.isLevel = bar !== null;
    fields.addMissed(this.missed, "across", at.own, start);
    fields.addMissed(this.missed, "up", at.own, start);
  }

  cost(): Cost | null {
    const { wanting } = this.fields;
    for (const { place } of wanting.wishes) {
      const missed = this.missAt(place);
      if (missed === null) return null;
      this.missed.set(place, missed);
      if (!this.isLevel) continue;
      if (missed > this.bar![place]!) return null;
      this.isLevel = missed === this.bar![place];
    }
    const score = this.ownScore(this.isLevel ? scoreIn(this.bar!) : null);
    if (!score) return null;
    const cost = costOf(wanting, this.missed, score);
    return this.bar && compareCosts(cost, this.bar) > 0 ? null : cost;
  }

  /** What the wish at a place misses; null when it is more than the bar allows. */
  private missAt(place: number): number | null {
    const under = this.at.under.find((each) => each.place === place);
    if (under) {
      const most = this.isLevel ? slivers(this.bar![place]!) : null;
      return this.weigh(under.field, most)?.slivers ?? null;
    }
    if (this.fields.cutPlaces.includes(place)) return this.ownScore(null)!.cuts;
    return this.missed.get(place) ?? 0;
  }

  private ownScore(most: Score | null): Score | null {
    this.score ??= this.weigh(this.at.own, most);
    return this.score;
  }

  private weigh(field: Field, most: Score | null): Score | null {
    return weighQuickly(field, this.start, this.fields.effort, most);
  }
}

/** A score over which only a number of slivers is. */
function slivers(most: number): Score {
  const any = Infinity;
  return { slivers: most, underHalf: any, imbalance: any, cuts: any, tiles: any, jointOver: any };
}

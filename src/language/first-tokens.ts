import { getLookaheadPaths, type ILookaheadStrategy, LLkLookaheadStrategy } from "chevrotain";
import { PlanGrammar } from "./grammar.js";
import { TOKENS } from "./line-grammar.js";

type Place = Parameters<typeof getLookaheadPaths>[0];
type AlternationOptions = Parameters<ILookaheadStrategy["buildLookaheadForAlternation"]>[0];
type OptionalOptions = Parameters<ILookaheadStrategy["buildLookaheadForOptional"]>[0];

/**
 * The tokens that each way on from the places of the grammar begins with, as numbers of TOKENS. Places
 * have Chevrotain's own numbers, which come of the order of the rules.
 */
export interface FirstTokens {
  /** Where one of several ways is taken: those of each. */
  readonly alternatives: Readonly<Record<number, readonly (readonly number[])[]>>;
  /** Where the grammar goes on, or doesn't: those of going on. */
  readonly optional: Readonly<Record<number, readonly number[]>>;
}

/** Works them out of the whole grammar. That takes longer than to read a plan, so bundles hold what it comes to. */
export function firstTokens(): FirstTokens {
  const noting = new Noting({ maxLookahead: 1 });
  const grammar = new PlanGrammar({ skipValidations: true, recovers: false, lookahead: noting });
  const { lookAheadFuncsCache: places } = grammar as unknown as Chooses;
  const noted = <T>(from: ReadonlyMap<unknown, T>): Record<number, T> =>
    Object.fromEntries([...places].flatMap(([place, choice]) => pairUp(place, from.get(choice))));
  return { alternatives: noted(noting.alternatives), optional: noted(noting.optional) };
}

/** Where Chevrotain keeps what its strategy made for each place. */
interface Chooses {
  readonly lookAheadFuncsCache: ReadonlyMap<number, unknown>;
}

function pairUp<T>(place: number, tokens: T | undefined): [number, T][] {
  return tokens === undefined ? [] : [[place, tokens]];
}

/** A strategy that chooses nothing, and keeps what there was to choose from. */
class Noting extends LLkLookaheadStrategy {
  readonly alternatives = new Map<unknown, number[][]>();
  readonly optional = new Map<unknown, number[]>();

  override buildLookaheadForAlternation(options: AlternationOptions) {
    const { prodOccurrence, rule, hasPredicates } = options;
    if (hasPredicates) throw new Error(`A way of ${rule.name} has a gate, which no token tells`);
    const choice = (): undefined => undefined;
    const prodType = "Alternation";
    this.alternatives.set(choice, waysFrom({ occurrence: prodOccurrence, rule, prodType }));
    return choice;
  }

  override buildLookaheadForOptional({ prodOccurrence, rule, prodType }: OptionalOptions) {
    // Chevrotain makes a message of the record where such a one isn't there.
    if (prodType.startsWith("RepetitionMandatory")) {
      throw new Error(
        `A repetition of ${rule.name} must be there once, which needs a recorded grammar`,
      );
    }
    const choice = (): boolean => false;
    const [goingOn] = waysFrom({ occurrence: prodOccurrence, rule, prodType });
    this.optional.set(choice, goingOn!);
    return choice;
  }
}

function waysFrom(place: Omit<Place, "maxLookahead">): number[][] {
  const ways = getLookaheadPaths({ ...place, maxLookahead: 1 });
  return ways.map((paths) => paths.map(([first]) => TOKENS.indexOf(first!)));
}

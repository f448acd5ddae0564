import { NoViableAltException } from "chevrotain";
import type { FirstTokens } from "./first-tokens.js";
import { PlanGrammar } from "./grammar.js";
import { TOKENS } from "./line-grammar.js";

/** Which of its ways a place takes, undefined for none; or whether it goes on. */
type Choice = () => number | boolean | undefined;

/**
 * The grammar that knows from the start what each of its ways begins with. Chevrotain's own records its
 * rules for that, which takes longer than to read a plan. Without a record there is nothing to make a
 * message of: an error ends the reading, and has no words.
 */
export class PreparedGrammar extends PlanGrammar {
  private readonly choices = new Map<number, Choice>();

  constructor(private readonly firstTokens: FirstTokens) {
    super({ skipValidations: true, recovers: false });
  }

  /** Takes the place of the recording. */
  protected override performSelfAnalysis(): void {
    (this as unknown as { selfAnalysisDone: boolean }).selfAnalysisDone = true;
  }

  /** Chevrotain asks for each choice by its place, whenever it comes to it. */
  protected getLaFuncFromCache(place: number): Choice {
    let choice = this.choices.get(place);
    if (!choice) {
      choice = this.choiceAt(place);
      this.choices.set(place, choice);
    }
    return choice;
  }

  private choiceAt(place: number): Choice {
    const { alternatives, optional } = this.firstTokens;
    const goingOn = optional[place];
    if (!goingOn) return this.alternative(waysByToken(alternatives[place]!));
    const goesOn = waysByToken([goingOn]);
    return () => goesOn.has(this.LA(1).tokenTypeIdx);
  }

  private alternative(ways: ReadonlyMap<number, number>): Choice {
    return () => ways.get(this.LA(1).tokenTypeIdx) ?? this.stop();
  }

  private stop(): never {
    const error = new NoViableAltException("", this.LA(1), this.LA(0));
    this.errors = [error];
    throw error;
  }
}

/** The first way that may begin with a token, or with what is one of its kind. */
function waysByToken(ways: readonly (readonly number[])[]): Map<number, number> {
  const byToken = new Map<number, number>();
  ways.forEach((firsts, way) => {
    const begins = (token: number): void => {
      if (!byToken.has(token)) byToken.set(token, way);
    };
    for (const first of firsts) {
      const { tokenTypeIdx, categoryMatches } = TOKENS[first]!;
      begins(tokenTypeIdx!);
      categoryMatches!.forEach(begins);
    }
  });
  return byToken;
}

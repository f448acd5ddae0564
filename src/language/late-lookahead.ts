import { type ILookaheadStrategy, LLkLookaheadStrategy } from "chevrotain";

type AlternationOptions = Parameters<ILookaheadStrategy["buildLookaheadForAlternation"]>[0];
type OptionalOptions = Parameters<ILookaheadStrategy["buildLookaheadForOptional"]>[0];
type ChoosesAlternative = ReturnType<ILookaheadStrategy["buildLookaheadForAlternation"]>;
type GoesOn = ReturnType<ILookaheadStrategy["buildLookaheadForOptional"]>;

/**
 * Chevrotain's lookahead, worked out at each place of the grammar when a text first comes to it: most
 * plans use a part of the language, and the command line starts anew for each of them.
 */
export class LateLookahead extends LLkLookaheadStrategy {
  override buildLookaheadForAlternation(options: AlternationOptions): ChoosesAlternative {
    let made: ChoosesAlternative | undefined;
    const build = () => super.buildLookaheadForAlternation(options);
    return function (this: unknown, alternatives) {
      made ??= build();
      return made.call(this, alternatives);
    };
  }

  override buildLookaheadForOptional(options: OptionalOptions): GoesOn {
    let made: GoesOn | undefined;
    const build = () => super.buildLookaheadForOptional(options);
    return function (this: unknown) {
      made ??= build();
      return made.call(this);
    };
  }
}

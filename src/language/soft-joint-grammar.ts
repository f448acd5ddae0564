import { INSIDE_A_LINE } from "./line-grammar.js";
import * as T from "./tokens.js";
import { START, WORD } from "./vocabulary.js";
import { WishGrammar } from "./wish-grammar.js";

const ENDS_A_LENGTH = [T.LineEnd, T.Plus, T.Minus, T.Star, T.Slash];

/** What is filled with sealant within the tile: `movement joint at 120`, and the joint between lays. */
export class SoftJointGrammar extends WishGrammar {
  /** over course 12 */
  protected readonly overCourse = this.RULE(
    "overCourse",
    () => {
      this.CONSUME(WORD.over);
      this.CONSUME(WORD.course);
      this.CONSUME(T.Length, { LABEL: "over" });
    },
    INSIDE_A_LINE,
  );

  protected readonly softJoint = this.RULE("softJoint", () => {
    this.CONSUME(START.softJoint.token);
    this.CONSUME(WORD.joint);
    this.OR([
      {
        ALT: () => {
          this.CONSUME(WORD.at);
          this.SUBRULE(this.expression);
        },
      },
      { ALT: () => this.SUBRULE(this.overCourse) },
    ]);
    this.CONSUME(T.LineEnd);
  });

  /** A joint between lays is hard unless it says `movement`, as an edge's does. */
  protected readonly between = this.RULE("between", () => {
    this.CONSUME(START.between.token);
    this.OPTION({
      // `movement` may be a named length, too: then no other length stands behind it.
      GATE: () => !ENDS_A_LENGTH.includes(this.LA(2).tokenType),
      DEF: () => this.CONSUME(WORD.movement, { LABEL: "soft" }),
    });
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });
}

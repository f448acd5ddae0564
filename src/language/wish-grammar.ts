import { LineGrammar } from "./line-grammar.js";
import * as T from "./tokens.js";
import { START, WORD } from "./vocabulary.js";

/** `prefer { ... }`: what is wanted of a layout, a wish a line, the most wanted first. */
export class WishGrammar extends LineGrammar {
  protected readonly coursesMeet = this.RULE("coursesMeet", () => {
    this.CONSUME(START.coursesMeet.token);
    this.CONSUME(WORD.meet);
    this.CONSUME(T.LineEnd);
  });

  protected readonly bondGoesOn = this.RULE("bondGoesOn", () => {
    this.CONSUME(START.bondGoesOn.token);
    this.CONSUME(WORD.goes);
    this.CONSUME(WORD.on);
    this.CONSUME(T.LineEnd);
  });

  protected readonly centreOn = this.RULE("centreOn", () => {
    this.CONSUME(START.centreOn.token);
    this.CONSUME(WORD.on);
    this.CONSUME(T.Name);
    this.CONSUME(T.LineEnd);
  });

  protected readonly noCut = this.RULE("noCut", () => {
    this.CONSUME(START.noCut.token);
    this.CONSUME(WORD.cut);
    this.CONSUME(WORD.under);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly wholeCourses = this.RULE("wholeCourses", () => {
    this.CONSUME(START.wholeCourses.token);
    this.CONSUME(WORD.courses);
    this.CONSUME(WORD.at);
    this.OR([
      { ALT: () => this.CONSUME(WORD.bottom, { LABEL: "side" }) },
      { ALT: () => this.CONSUME(WORD.top, { LABEL: "side" }) },
      {
        ALT: () => {
          this.CONSUME(WORD.sill, { LABEL: "edge" });
          this.CONSUME(WORD.of);
          this.CONSUME(T.Name);
        },
      },
      {
        ALT: () => {
          this.CONSUME(WORD.head, { LABEL: "edge" });
          this.CONSUME2(WORD.of);
          this.CONSUME2(T.Name);
        },
      },
    ]);
    this.CONSUME(T.LineEnd);
  });

  protected readonly equalEnds = this.RULE("equalEnds", () => {
    this.CONSUME(START.equalEnds.token);
    this.CONSUME(WORD.ends);
    this.CONSUME(T.LineEnd);
  });

  protected readonly fewCuts = this.RULE("fewCuts", () => {
    this.CONSUME(START.fewCuts.token);
    this.CONSUME(WORD.cuts);
    this.CONSUME(T.LineEnd);
  });

  protected readonly preferStatement = this.RULE("preferStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.coursesMeet) },
      { ALT: () => this.SUBRULE(this.bondGoesOn) },
      { ALT: () => this.SUBRULE(this.centreOn) },
      { ALT: () => this.SUBRULE(this.noCut) },
      { ALT: () => this.SUBRULE(this.wholeCourses) },
      { ALT: () => this.SUBRULE(this.equalEnds) },
      { ALT: () => this.SUBRULE(this.fewCuts) },
    ]);
  });

  protected readonly prefer = this.RULE("prefer", () => {
    this.CONSUME(START.prefer.token);
    this.SUBRULE(this.bareHeading);
    this.MANY(() => this.SUBRULE(this.preferStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });
}

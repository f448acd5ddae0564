import * as T from "./tokens.js";
import { START, WORD } from "./vocabulary.js";
import type { GrammarOptions } from "./line-grammar.js";
import { StockGrammar } from "./stock-grammar.js";

/** The whole language; its door is `text`. */
export class PlanGrammar extends StockGrammar {
  constructor(options: GrammarOptions) {
    super(options);
    this.performSelfAnalysis();
  }

  protected readonly plan = this.RULE("plan", () => {
    this.CONSUME(START.plan.token);
    this.CONSUME(T.Text);
    this.CONSUME(T.LineEnd);
  });

  protected readonly units = this.RULE("units", () => {
    this.CONSUME(START.units.token);
    this.CONSUME(T.Name);
    this.CONSUME(T.LineEnd);
  });

  protected readonly bed = this.RULE("bed", () => {
    this.CONSUME(START.bed.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly let = this.RULE("let", () => {
    this.CONSUME(START.let.token);
    this.CONSUME(T.Name);
    this.CONSUME(T.Equals);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly use = this.RULE("use", () => {
    this.CONSUME(START.use.token);
    this.CONSUME(T.Text);
    this.CONSUME(T.LineEnd);
  });

  protected readonly limit = this.RULE("limit", () => {
    this.CONSUME(START.limit.token);
    this.OR({
      DEF: [
        { ALT: () => this.CONSUME(WORD.off, { LABEL: "switch" }) },
        { ALT: () => this.CONSUME(WORD.on, { LABEL: "switch" }) },
        // `off` and `on` are names too: the two alternatives above go first.
        { ALT: () => this.SUBRULE(this.expression), IGNORE_AMBIGUITIES: true },
      ],
      ERR_MSG: "`off`, `on` or a length",
    });
    this.CONSUME(T.LineEnd);
  });

  protected readonly rulesStatement = this.RULE("rulesStatement", () => {
    this.SUBRULE(this.limit);
  });

  protected readonly rules = this.RULE("rules", () => {
    this.CONSUME(START.rules.token);
    this.SUBRULE(this.bareHeading);
    this.MANY(() => this.SUBRULE(this.rulesStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });

  protected readonly planStatement = this.RULE("planStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.plan) },
      { ALT: () => this.SUBRULE(this.units) },
      { ALT: () => this.SUBRULE(this.bed) },
      { ALT: () => this.SUBRULE(this.let) },
      { ALT: () => this.SUBRULE(this.use) },
      { ALT: () => this.SUBRULE(this.tile) },
      { ALT: () => this.SUBRULE(this.trim) },
      { ALT: () => this.SUBRULE(this.saw) },
      { ALT: () => this.SUBRULE(this.mortar) },
      { ALT: () => this.SUBRULE(this.grout) },
      { ALT: () => this.SUBRULE(this.sealant) },
      { ALT: () => this.SUBRULE(this.wall) },
      { ALT: () => this.SUBRULE(this.prefer) },
      { ALT: () => this.SUBRULE(this.rules) },
      { ALT: () => this.SUBRULE(this.allow) },
    ]);
  });

  readonly text = this.RULE("text", () => {
    this.MANY(() => this.SUBRULE(this.planStatement));
  });
}

import * as T from "./tokens.js";
import { START, WORD } from "./vocabulary.js";
import type { GrammarOptions } from "./line-grammar.js";
import { WallGrammar } from "./wall-grammar.js";

/** The whole language; its door is `text`. */
export class PlanGrammar extends WallGrammar {
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

  protected readonly variation = this.RULE("variation", () => {
    this.CONSUME(START.variation.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly edges = this.RULE("edges", () => {
    this.CONSUME(START.edges.token);
    this.OR([
      { ALT: () => this.CONSUME(WORD.pressed, { LABEL: "finish" }) },
      { ALT: () => this.CONSUME(WORD.rectified, { LABEL: "finish" }) },
    ]);
    this.CONSUME(T.LineEnd);
  });

  protected readonly box = this.RULE("box", () => {
    this.CONSUME(START.box.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly tileStatement = this.RULE("tileStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.face) },
      { ALT: () => this.SUBRULE(this.thickness) },
      { ALT: () => this.SUBRULE(this.variation) },
      { ALT: () => this.SUBRULE(this.edges) },
      { ALT: () => this.SUBRULE(this.box) },
      { ALT: () => this.SUBRULE(this.allow) },
    ]);
  });

  protected readonly tile = this.RULE("tile", () => {
    this.CONSUME(START.tile.token);
    this.SUBRULE(this.titledHeading);
    this.MANY(() => this.SUBRULE(this.tileStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });

  protected readonly trimStatement = this.RULE("trimStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.face) },
      { ALT: () => this.SUBRULE(this.thickness) },
      { ALT: () => this.SUBRULE(this.allow) },
    ]);
  });

  protected readonly trim = this.RULE("trim", () => {
    this.CONSUME(START.trim.token);
    this.SUBRULE(this.titledHeading);
    this.MANY(() => this.SUBRULE(this.trimStatement));
    this.CONSUME(T.CloseBrace);
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

  protected readonly rulesHeading = this.RULE("rulesHeading", () => {
    this.CONSUME(T.OpenBrace);
  });

  protected readonly rules = this.RULE("rules", () => {
    this.CONSUME(START.rules.token);
    this.SUBRULE(this.rulesHeading);
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
      { ALT: () => this.SUBRULE(this.wall) },
      { ALT: () => this.SUBRULE(this.rules) },
      { ALT: () => this.SUBRULE(this.allow) },
    ]);
  });

  readonly text = this.RULE("text", () => {
    this.MANY(() => this.SUBRULE(this.planStatement));
  });
}

import { INSIDE_A_LINE } from "./line-grammar.js";
import * as T from "./tokens.js";
import { START, WORD } from "./vocabulary.js";
import { WallGrammar } from "./wall-grammar.js";

/** What is bought and what it is cut with: tiles, trims, saw, mortar, grout, sealant. */
export class StockGrammar extends WallGrammar {
  /** A number that is no length; a negative one is understood, so that it can be told. */
  private readonly number = this.RULE(
    "number",
    () => {
      this.OPTION(() => this.CONSUME(T.Sign));
      this.OR({ DEF: [{ ALT: () => this.CONSUME(T.Length) }], ERR_MSG: "a number" });
    },
    INSIDE_A_LINE,
  );

  /** 50 lb; in `50lb` the unit is part of the number. */
  private readonly mass = this.RULE("mass", () => this.numberWithUnit(), INSIDE_A_LINE);
  private readonly volume = this.RULE("volume", () => this.numberWithUnit(), INSIDE_A_LINE);
  private readonly area = this.RULE("area", () => this.numberWithUnit(), INSIDE_A_LINE);

  private numberWithUnit(): void {
    this.SUBRULE(this.number);
    this.OPTION({
      GATE: () => this.LA(1).tokenType !== WORD.covers,
      DEF: () => this.CONSUME(T.Name, { LABEL: "unit" }),
    });
  }

  protected readonly variation = this.RULE("variation", () => {
    this.CONSUME(START.variation.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly warpage = this.RULE("warpage", () => {
    this.CONSUME(START.warpage.token);
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

  protected readonly directional = this.RULE("directional", () => {
    this.CONSUME(START.directional.token);
    this.CONSUME(T.LineEnd);
  });

  protected readonly lot = this.RULE("lot", () => {
    this.CONSUME(START.lot.token);
    this.CONSUME(T.Text);
    this.CONSUME(T.LineEnd);
  });

  protected readonly breakage = this.RULE("breakage", () => {
    this.CONSUME(START.breakage.token);
    this.SUBRULE(this.number);
    this.CONSUME(T.Percent);
    this.CONSUME(T.LineEnd);
  });

  protected readonly spares = this.RULE("spares", () => {
    this.CONSUME(START.spares.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly tilePrice = this.RULE("tilePrice", () => {
    this.CONSUME(START.tilePrice.token);
    this.SUBRULE(this.number);
    this.CONSUME(WORD.a);
    this.OR([
      { ALT: () => this.CONSUME(WORD.box, { LABEL: "per" }) },
      { ALT: () => this.CONSUME(WORD.piece, { LABEL: "per" }) },
    ]);
    this.CONSUME(T.LineEnd);
  });

  protected readonly trimPrice = this.RULE("trimPrice", () => {
    this.CONSUME(START.trimPrice.token);
    this.SUBRULE(this.number);
    this.CONSUME(WORD.a);
    this.CONSUME(WORD.piece, { LABEL: "per" });
    this.CONSUME(T.LineEnd);
  });

  protected readonly bagPrice = this.RULE("bagPrice", () => {
    this.CONSUME(START.bagPrice.token);
    this.SUBRULE(this.number);
    this.CONSUME(WORD.a);
    this.CONSUME(WORD.bag, { LABEL: "per" });
    this.CONSUME(T.LineEnd);
  });

  protected readonly tubePrice = this.RULE("tubePrice", () => {
    this.CONSUME(START.tubePrice.token);
    this.SUBRULE(this.number);
    this.CONSUME(WORD.a);
    this.CONSUME(WORD.tube, { LABEL: "per" });
    this.CONSUME(T.LineEnd);
  });

  protected readonly tileStatement = this.RULE("tileStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.face) },
      { ALT: () => this.SUBRULE(this.thickness) },
      { ALT: () => this.SUBRULE(this.variation) },
      { ALT: () => this.SUBRULE(this.warpage) },
      { ALT: () => this.SUBRULE(this.edges) },
      { ALT: () => this.SUBRULE(this.box) },
      { ALT: () => this.SUBRULE(this.directional) },
      { ALT: () => this.SUBRULE(this.lot) },
      { ALT: () => this.SUBRULE(this.tilePrice) },
      { ALT: () => this.SUBRULE(this.breakage) },
      { ALT: () => this.SUBRULE(this.spares) },
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
      { ALT: () => this.SUBRULE(this.lot) },
      { ALT: () => this.SUBRULE(this.trimPrice) },
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

  protected readonly kerf = this.RULE("kerf", () => {
    this.CONSUME(START.kerf.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly rip = this.RULE("rip", () => {
    this.CONSUME(START.rip.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly sawStatement = this.RULE("sawStatement", () => {
    this.OR([{ ALT: () => this.SUBRULE(this.kerf) }, { ALT: () => this.SUBRULE(this.rip) }]);
  });

  protected readonly saw = this.RULE("saw", () => {
    this.CONSUME(START.saw.token);
    this.SUBRULE(this.bareHeading);
    this.MANY(() => this.SUBRULE(this.sawStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });

  protected readonly notch = this.RULE("notch", () => {
    this.CONSUME(START.notch.token);
    this.SUBRULE(this.pair);
    this.CONSUME(T.LineEnd);
  });

  protected readonly mortarBag = this.RULE("mortarBag", () => {
    this.CONSUME(START.mortarBag.token);
    this.SUBRULE(this.mass);
    this.CONSUME(WORD.covers);
    this.SUBRULE(this.area);
    this.CONSUME(T.LineEnd);
  });

  protected readonly backButter = this.RULE("backButter", () => {
    this.CONSUME(START.backButter.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly mortarStatement = this.RULE("mortarStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.notch) },
      { ALT: () => this.SUBRULE(this.mortarBag) },
      { ALT: () => this.SUBRULE(this.backButter) },
      { ALT: () => this.SUBRULE(this.bagPrice) },
    ]);
  });

  protected readonly mortar = this.RULE("mortar", () => {
    this.CONSUME(START.mortar.token);
    this.SUBRULE(this.namelessHeading);
    this.MANY(() => this.SUBRULE(this.mortarStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });

  protected readonly density = this.RULE("density", () => {
    this.CONSUME(START.density.token);
    this.SUBRULE(this.number);
    this.CONSUME(T.LineEnd);
  });

  protected readonly groutBag = this.RULE("groutBag", () => {
    this.CONSUME(START.groutBag.token);
    this.SUBRULE(this.mass);
    this.CONSUME(T.LineEnd);
  });

  protected readonly groutStatement = this.RULE("groutStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.density) },
      { ALT: () => this.SUBRULE(this.groutBag) },
      { ALT: () => this.SUBRULE(this.bagPrice) },
    ]);
  });

  protected readonly grout = this.RULE("grout", () => {
    this.CONSUME(START.grout.token);
    this.SUBRULE(this.namelessHeading);
    this.MANY(() => this.SUBRULE(this.groutStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });

  protected readonly tube = this.RULE("tube", () => {
    this.CONSUME(START.tube.token);
    this.SUBRULE(this.volume);
    this.CONSUME(T.LineEnd);
  });

  protected readonly sealantStatement = this.RULE("sealantStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.tube) },
      { ALT: () => this.SUBRULE(this.depth) },
      { ALT: () => this.SUBRULE(this.tubePrice) },
    ]);
  });

  protected readonly sealant = this.RULE("sealant", () => {
    this.CONSUME(START.sealant.token);
    this.SUBRULE(this.namelessHeading);
    this.MANY(() => this.SUBRULE(this.sealantStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });
}

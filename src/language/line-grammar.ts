import { CstParser } from "chevrotain";
import * as T from "./tokens.js";
import { START, WORD } from "./vocabulary.js";
import { wantedMessages } from "./wanted.js";

/** Every token that the grammar may meet. */
const TOKENS = [
  ...T.LEXED,
  ...Object.values(WORD),
  ...Object.values(START).map(({ token }) => token),
];

/** Inside a line nothing is recovered: an error ends the statement, and the next line goes on. */
export const INSIDE_A_LINE = { resyncEnabled: false };

const LENGTH_WANTED = "a length";

/**
 * What the lines of several blocks share: lengths, pairs, headings. The layout hands over lines that
 * begin with a statement's own token and end with a LineEnd, in braces that match. So an error costs the
 * rest of its line: recovery goes on at the next statement's token. Nothing is ever put in or taken
 * out (Chevrotain would give such tokens no place in the text).
 */
export class LineGrammar extends CstParser {
  constructor(options: GrammarOptions) {
    super(TOKENS, {
      recoveryEnabled: true,
      maxLookahead: 1,
      nodeLocationTracking: "onlyOffset",
      skipValidations: options.skipValidations,
      errorMessageProvider: wantedMessages,
    });
  }

  protected readonly atom = this.RULE(
    "atom",
    () => {
      this.OR({
        DEF: [
          { ALT: () => this.CONSUME(T.Length) },
          { ALT: () => this.CONSUME(T.Name) },
          {
            ALT: () => {
              this.CONSUME(T.OpenParen);
              this.SUBRULE(this.sum);
              this.CONSUME(T.CloseParen);
            },
          },
        ],
        ERR_MSG: LENGTH_WANTED,
      });
    },
    INSIDE_A_LINE,
  );

  protected readonly signed = this.RULE(
    "signed",
    () => {
      this.OPTION(() =>
        this.OR([
          { ALT: () => this.CONSUME(T.Plus, { LABEL: "sign" }) },
          { ALT: () => this.CONSUME(T.Minus, { LABEL: "sign" }) },
        ]),
      );
      this.SUBRULE(this.atom);
    },
    INSIDE_A_LINE,
  );

  protected readonly product = this.RULE(
    "product",
    () => {
      this.SUBRULE(this.signed);
      this.MANY(() => {
        this.OR([
          { ALT: () => this.CONSUME(T.Star, { LABEL: "operator" }) },
          { ALT: () => this.CONSUME(T.Slash, { LABEL: "operator" }) },
        ]);
        this.SUBRULE2(this.signed);
      });
    },
    INSIDE_A_LINE,
  );

  protected readonly sum = this.RULE(
    "sum",
    () => {
      this.SUBRULE(this.product);
      this.MANY(() => {
        this.OR([
          { ALT: () => this.CONSUME(T.Plus, { LABEL: "operator" }) },
          { ALT: () => this.CONSUME(T.Minus, { LABEL: "operator" }) },
        ]);
        this.SUBRULE2(this.product);
      });
    },
    INSIDE_A_LINE,
  );

  /** Two lengths: 24 x 36 */
  protected readonly pair = this.RULE(
    "pair",
    () => {
      this.SUBRULE(this.sum, { LABEL: "first" });
      this.OR([{ ALT: () => this.CONSUME(WORD.x) }, { ALT: () => this.CONSUME(T.TightTimes) }]);
      this.SUBRULE2(this.sum, { LABEL: "second" });
    },
    INSIDE_A_LINE,
  );

  protected readonly allow = this.RULE("allow", () => {
    this.CONSUME(START.allow.token);
    this.CONSUME(T.Name, { LABEL: "group" });
    this.CONSUME(T.Slash);
    this.CONSUME2(T.Name, { LABEL: "rule" });
    this.CONSUME(T.Text);
    this.CONSUME(T.LineEnd);
  });

  /** NAME "title" {  */
  protected readonly titledHeading = this.RULE("titledHeading", () => {
    this.CONSUME(T.Name);
    this.OPTION(() => this.CONSUME(T.Text));
    this.CONSUME(T.OpenBrace);
  });

  /** NAME {  */
  protected readonly heading = this.RULE("heading", () => {
    this.CONSUME(T.Name);
    this.CONSUME(T.OpenBrace);
  });

  protected readonly face = this.RULE("face", () => {
    this.CONSUME(START.face.token);
    this.SUBRULE(this.pair);
    this.CONSUME(T.LineEnd);
  });

  protected readonly thickness = this.RULE("thickness", () => {
    this.CONSUME(START.thickness.token);
    this.SUBRULE(this.sum);
    this.CONSUME(T.LineEnd);
  });

  protected readonly size = this.RULE("size", () => {
    this.CONSUME(START.size.token);
    this.SUBRULE(this.pair);
    this.CONSUME(T.LineEnd);
  });

  protected readonly movement = this.RULE("movement", () => {
    this.CONSUME(START.movement.token);
    this.SUBRULE(this.sum);
    this.CONSUME(T.LineEnd);
  });

  protected override canTokenTypeBeInsertedInRecovery(): boolean {
    return false;
  }

  protected override canTokenTypeBeDeletedInRecovery(): boolean {
    return false;
  }

  /** A repetition that ends early is an error of its line, not a reason to skip ahead inside it. */
  protected shouldInRepetitionRecoveryBeTried(): boolean {
    return false;
  }
}

export interface GrammarOptions {
  /** Chevrotain's checks of the grammar itself; a test runs with them, a plan's reader has no time for them. */
  readonly skipValidations: boolean;
}

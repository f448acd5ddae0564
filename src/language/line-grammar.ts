import { CstParser, type ILookaheadStrategy, type TokenType } from "chevrotain";
import { LateLookahead } from "./late-lookahead.js";
import * as T from "./tokens.js";
import { START, WORD } from "./vocabulary.js";
import { wantedMessages } from "./wanted.js";

/** Every token that the grammar may meet. */
export const TOKENS: readonly TokenType[] = [
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
    super([...TOKENS], {
      recoveryEnabled: options.recovers,
      maxLookahead: 1,
      lookaheadStrategy: options.lookahead ?? new LateLookahead({ maxLookahead: 1 }),
      nodeLocationTracking: "onlyOffset",
      skipValidations: options.skipValidations,
      errorMessageProvider: wantedMessages,
    });
  }

  /**
   * Ends the recording of the rules. Chevrotain's own deletes each method that it recorded with, one by
   * one, from an object that is slow from then on: with a large grammar, a fifth of the time to a first
   * text. Here the real methods take their places.
   */
  protected disableRecording(): void {
    const own = this as unknown as Record<string, unknown>;
    const real = CstParser.prototype as unknown as Record<string, unknown>;
    own.RECORDING_PHASE = false;
    for (const name of Object.keys(own)) if (name in real) own[name] = real[name];
  }

  /** Wherever a length may stand. Which operator binds closer is the tree's concern. */
  protected readonly expression = this.RULE(
    "expression",
    () => {
      this.SUBRULE(this.term);
      this.MANY(() => {
        this.CONSUME(T.Operator);
        this.SUBRULE2(this.term);
      });
    },
    INSIDE_A_LINE,
  );

  private readonly term = this.RULE(
    "term",
    () => {
      this.OPTION(() => this.CONSUME(T.Sign));
      this.OR({
        DEF: [
          { ALT: () => this.CONSUME(T.Length) },
          { ALT: () => this.CONSUME(T.Name) },
          {
            ALT: () => {
              this.CONSUME(T.OpenParen);
              this.SUBRULE(this.expression);
              this.CONSUME(T.CloseParen);
            },
          },
        ],
        ERR_MSG: LENGTH_WANTED,
      });
    },
    INSIDE_A_LINE,
  );

  /** Two lengths: 24 x 36 */
  protected readonly pair = this.RULE(
    "pair",
    () => {
      this.SUBRULE(this.expression, { LABEL: "first" });
      this.OR([{ ALT: () => this.CONSUME(WORD.x) }, { ALT: () => this.CONSUME(T.TightTimes) }]);
      this.SUBRULE2(this.expression, { LABEL: "second" });
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

  /** {  */
  protected readonly bareHeading = this.RULE("bareHeading", () => {
    this.CONSUME(T.OpenBrace);
  });

  /** "title" {  */
  protected readonly namelessHeading = this.RULE("namelessHeading", () => {
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
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly size = this.RULE("size", () => {
    this.CONSUME(START.size.token);
    this.SUBRULE(this.pair);
    this.OPTION(() => {
      this.CONSUME(WORD.to);
      this.SUBRULE(this.expression, { LABEL: "upTo" });
    });
    this.CONSUME(T.LineEnd);
  });

  protected readonly movement = this.RULE("movement", () => {
    this.CONSUME(START.movement.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly depth = this.RULE("depth", () => {
    this.CONSUME(START.depth.token);
    this.SUBRULE(this.expression);
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
  /** Whether the statements after an error are read too. What that takes is as much work as reading a plan. */
  readonly recovers: boolean;
  /** How it looks ahead, where not each place by itself when a text first comes to it. */
  readonly lookahead?: ILookaheadStrategy;
}

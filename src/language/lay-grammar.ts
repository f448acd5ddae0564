import { INSIDE_A_LINE } from "./line-grammar.js";
import * as T from "./tokens.js";
import { SoftJointGrammar } from "./soft-joint-grammar.js";
import { START, WORD } from "./vocabulary.js";

/** `lay TILE { ... }`, and `at`, which openings share with it. Parts stand before what is made of them. */
export class LayGrammar extends SoftJointGrammar {
  /** Of a range, the place is left to the solver. A door's height may be left out: it stands on the level line. */
  protected readonly at = this.RULE("at", () => {
    this.CONSUME(START.at.token);
    this.SUBRULE(this.expression, { LABEL: "x" });
    this.OPTION(() => {
      this.CONSUME(WORD.to);
      this.SUBRULE2(this.expression, { LABEL: "xTo" });
    });
    this.OPTION2(() => {
      this.CONSUME(T.Comma);
      this.SUBRULE3(this.expression, { LABEL: "y" });
      this.OPTION3(() => {
        this.CONSUME2(WORD.to);
        this.SUBRULE4(this.expression, { LABEL: "yTo" });
      });
    });
    this.CONSUME(T.LineEnd);
  });

  protected readonly bond = this.RULE("bond", () => {
    this.CONSUME(START.bond.token);
    this.OR([
      { ALT: () => this.CONSUME(WORD.stack) },
      {
        ALT: () => {
          this.CONSUME(WORD.running);
          this.CONSUME(T.Length);
        },
      },
    ]);
    this.CONSUME(T.LineEnd);
  });

  protected readonly joint = this.RULE("joint", () => {
    this.CONSUME(START.joint.token);
    this.SUBRULE(this.expression, { LABEL: "min" });
    this.OPTION(() => {
      this.CONSUME(WORD.to);
      this.SUBRULE2(this.expression, { LABEL: "max" });
    });
    this.CONSUME(T.LineEnd);
  });

  protected readonly fullTile = this.RULE(
    "fullTile",
    () => {
      this.CONSUME(WORD.full);
      this.CONSUME(WORD.tile);
      this.CONSUME(WORD.from);
      this.OR([
        { ALT: () => this.CONSUME(WORD.left, { LABEL: "from" }) },
        { ALT: () => this.CONSUME(WORD.right, { LABEL: "from" }) },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly centred = this.RULE(
    "centred",
    () => {
      this.OR([
        { ALT: () => this.CONSUME(WORD.tile, { LABEL: "what" }) },
        { ALT: () => this.CONSUME(WORD.joint, { LABEL: "what" }) },
      ]);
      this.CONSUME(WORD.centred);
      this.OR2([
        {
          ALT: () => {
            this.CONSUME(WORD.on);
            this.CONSUME(T.Name);
          },
        },
        {
          ALT: () => {
            this.CONSUME(WORD.at);
            this.SUBRULE(this.expression);
          },
        },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly carried = this.RULE(
    "carried",
    () => {
      this.OR([
        {
          ALT: () => {
            this.CONSUME(WORD.wrapped, { LABEL: "way" });
            this.CONSUME(WORD.from);
            this.CONSUME(T.Name);
            this.OR2([
              { ALT: () => this.CONSUME(WORD.added, { LABEL: "joint" }) },
              { ALT: () => this.CONSUME(WORD.swallowed, { LABEL: "joint" }) },
            ]);
          },
        },
        {
          ALT: () => {
            this.CONSUME(WORD.mirrored, { LABEL: "way" });
            this.CONSUME2(WORD.from);
            this.CONSUME2(T.Name);
          },
        },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly across = this.RULE("across", () => {
    this.CONSUME(START.across.token);
    this.OR([
      { ALT: () => this.SUBRULE(this.fullTile) },
      { ALT: () => this.SUBRULE(this.centred) },
      { ALT: () => this.SUBRULE(this.carried) },
    ]);
    this.CONSUME(T.LineEnd);
  });

  protected readonly fullCourse = this.RULE(
    "fullCourse",
    () => {
      this.CONSUME(WORD.full);
      this.CONSUME(WORD.course);
      this.OR([
        {
          ALT: () => {
            this.CONSUME(WORD.from);
            this.OR2([
              { ALT: () => this.CONSUME(WORD.bottom, { LABEL: "from" }) },
              { ALT: () => this.CONSUME(WORD.top, { LABEL: "from" }) },
            ]);
          },
        },
        {
          ALT: () => {
            this.CONSUME(WORD.under, { LABEL: "relation" });
            this.CONSUME(T.Name);
          },
        },
        {
          ALT: () => {
            this.CONSUME(WORD.over, { LABEL: "relation" });
            this.CONSUME2(T.Name);
          },
        },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly up = this.RULE("up", () => {
    this.CONSUME(START.up.token);
    this.OR([
      { ALT: () => this.SUBRULE(this.fullCourse) },
      {
        ALT: () => {
          this.CONSUME(WORD.joint);
          this.CONSUME(WORD.at);
          this.SUBRULE(this.expression);
        },
      },
    ]);
    this.CONSUME(T.LineEnd);
  });

  /** A lay may have several: each says up to where it reaches from one side of the wall. */
  protected readonly covers = this.RULE("covers", () => {
    this.CONSUME(START.covers.token);
    this.OR([
      { ALT: () => this.CONSUME(WORD.left, { LABEL: "from" }) },
      { ALT: () => this.CONSUME(WORD.right, { LABEL: "from" }) },
      { ALT: () => this.CONSUME(WORD.bottom, { LABEL: "from" }) },
      { ALT: () => this.CONSUME(WORD.top, { LABEL: "from" }) },
    ]);
    this.CONSUME(WORD.to);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly layOver = this.RULE("layOver", () => {
    this.CONSUME(START.layOver.token);
    this.CONSUME(T.Name);
    this.CONSUME(T.LineEnd);
  });

  protected readonly layUnder = this.RULE("layUnder", () => {
    this.CONSUME(START.layUnder.token);
    this.CONSUME(T.Name);
    this.CONSUME(T.LineEnd);
  });

  /** 8 of field, rest of field, 6 */
  protected readonly courseRun = this.RULE(
    "courseRun",
    () => {
      this.OR([
        { ALT: () => this.CONSUME(T.Length, { LABEL: "many" }) },
        { ALT: () => this.CONSUME(WORD.rest) },
      ]);
      this.OPTION(() => {
        this.CONSUME(WORD.of);
        this.CONSUME(T.Name);
      });
    },
    INSIDE_A_LINE,
  );

  protected readonly layCourses = this.RULE("layCourses", () => {
    this.CONSUME(START.layCourses.token);
    this.SUBRULE(this.courseRun);
    this.MANY(() => {
      this.CONSUME(T.Comma);
      this.SUBRULE2(this.courseRun);
    });
    this.CONSUME(T.LineEnd);
  });

  /** 36 1/8, 36 1/8 at left, 36 1/4 at 30 */
  protected readonly measuredTop = this.RULE(
    "measuredTop",
    () => {
      this.SUBRULE(this.expression, { LABEL: "y" });
      this.OPTION(() => {
        this.CONSUME(WORD.at);
        this.OR({
          DEF: [
            { ALT: () => this.CONSUME(WORD.left, { LABEL: "end" }) },
            { ALT: () => this.CONSUME(WORD.right, { LABEL: "end" }) },
            // `left` and `right` are names too: the two alternatives above go first.
            {
              ALT: () => this.SUBRULE2(this.expression, { LABEL: "at" }),
              IGNORE_AMBIGUITIES: true,
            },
          ],
          ERR_MSG: "`left`, `right` or a length",
        });
      });
    },
    INSIDE_A_LINE,
  );

  protected readonly setJoint = this.RULE(
    "setJoint",
    () => {
      this.CONSUME(WORD.joint);
      this.SUBRULE(this.expression);
    },
    INSIDE_A_LINE,
  );

  protected readonly setTops = this.RULE(
    "setTops",
    () => {
      this.CONSUME(WORD.top);
      this.SUBRULE(this.measuredTop);
      this.MANY(() => {
        this.CONSUME(T.Comma);
        this.SUBRULE2(this.measuredTop);
      });
    },
    INSIDE_A_LINE,
  );

  /** set courses 1 to 6 joint 1/16 top 36 1/8 at left, 36 1/4 at right */
  protected readonly set = this.RULE("set", () => {
    this.CONSUME(START.set.token);
    this.CONSUME(WORD.courses);
    this.CONSUME(T.Length, { LABEL: "first" });
    this.CONSUME(WORD.to);
    this.CONSUME2(T.Length, { LABEL: "last" });
    this.OPTION(() => this.SUBRULE(this.setJoint));
    this.OPTION2(() => this.SUBRULE(this.setTops));
    this.CONSUME(T.LineEnd);
  });

  protected readonly layStatement = this.RULE("layStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.bond) },
      { ALT: () => this.SUBRULE(this.joint) },
      { ALT: () => this.SUBRULE(this.across) },
      { ALT: () => this.SUBRULE(this.up) },
      { ALT: () => this.SUBRULE(this.covers) },
      { ALT: () => this.SUBRULE(this.at) },
      { ALT: () => this.SUBRULE(this.size) },
      { ALT: () => this.SUBRULE(this.layOver) },
      { ALT: () => this.SUBRULE(this.layUnder) },
      { ALT: () => this.SUBRULE(this.layCourses) },
      { ALT: () => this.SUBRULE(this.between) },
      { ALT: () => this.SUBRULE(this.set) },
      { ALT: () => this.SUBRULE(this.softJoint) },
      { ALT: () => this.SUBRULE(this.allow) },
    ]);
  });

  protected readonly lay = this.RULE("lay", () => {
    this.CONSUME(START.lay.token);
    this.SUBRULE(this.heading);
    this.MANY(() => this.SUBRULE(this.layStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });
}

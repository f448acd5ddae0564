import { LayGrammar } from "./lay-grammar.js";
import { INSIDE_A_LINE } from "./line-grammar.js";
import * as T from "./tokens.js";
import { START, WORD } from "./vocabulary.js";

/** `wall NAME { ... }`: its edges, openings and holes. Parts stand before what is made of them. */
export class WallGrammar extends LayGrammar {
  protected readonly reading = this.RULE(
    "reading",
    () => {
      this.SUBRULE(this.expression, { LABEL: "at" });
      this.CONSUME(T.Colon);
      this.SUBRULE2(this.expression, { LABEL: "off" });
    },
    INSIDE_A_LINE,
  );

  protected readonly measured = this.RULE(
    "measured",
    () => {
      this.CONSUME(WORD.measured);
      this.SUBRULE(this.reading);
      this.MANY(() => {
        this.CONSUME(T.Comma);
        this.SUBRULE2(this.reading);
      });
    },
    INSIDE_A_LINE,
  );

  protected readonly edgeJoint = this.RULE(
    "edgeJoint",
    () => {
      this.OR([
        { ALT: () => this.CONSUME(WORD.movement, { LABEL: "soft" }) },
        { ALT: () => this.CONSUME(WORD.joint, { LABEL: "hard" }) },
      ]);
      this.SUBRULE(this.expression);
    },
    INSIDE_A_LINE,
  );

  protected readonly edgeClause = this.RULE(
    "edgeClause",
    () => {
      this.OR([
        { ALT: () => this.SUBRULE(this.measured) },
        { ALT: () => this.SUBRULE(this.edgeJoint) },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly corner = this.RULE(
    "corner",
    () => {
      this.CONSUME(WORD.corner);
      this.CONSUME(T.Name);
      this.OR([
        { ALT: () => this.CONSUME(WORD.under, { LABEL: "lap" }) },
        { ALT: () => this.CONSUME(WORD.over, { LABEL: "lap" }) },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly endTrim = this.RULE(
    "endTrim",
    () => {
      this.CONSUME(WORD.trim);
      this.CONSUME(T.Name);
    },
    INSIDE_A_LINE,
  );

  protected readonly outside = this.RULE(
    "outside",
    () => {
      this.CONSUME(WORD.outside);
      this.CONSUME(T.Name);
      this.OR([
        { ALT: () => this.CONSUME(WORD.under, { LABEL: "lap" }) },
        { ALT: () => this.CONSUME(WORD.mitre, { LABEL: "lap" }) },
        {
          ALT: () => {
            this.CONSUME(WORD.over, { LABEL: "lap" });
            this.OPTION(() => this.SUBRULE(this.endTrim));
          },
        },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly free = this.RULE(
    "free",
    () => {
      this.CONSUME(WORD.free);
      this.OPTION(() => this.SUBRULE(this.endTrim));
    },
    INSIDE_A_LINE,
  );

  protected readonly meeting = this.RULE(
    "meeting",
    () => {
      this.OR([
        { ALT: () => this.CONSUME(WORD.pan, { LABEL: "plain" }) },
        { ALT: () => this.CONSUME(WORD.tub, { LABEL: "plain" }) },
        { ALT: () => this.CONSUME(WORD.floor, { LABEL: "plain" }) },
        { ALT: () => this.CONSUME(WORD.ceiling, { LABEL: "plain" }) },
        { ALT: () => this.CONSUME(WORD.counter, { LABEL: "plain" }) },
        { ALT: () => this.CONSUME(WORD.wall, { LABEL: "plain" }) },
        { ALT: () => this.SUBRULE(this.corner) },
        { ALT: () => this.SUBRULE(this.outside) },
        { ALT: () => this.SUBRULE(this.free) },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly edge = this.RULE("edge", () => {
    this.CONSUME(START.edge.token);
    this.SUBRULE(this.meeting);
    this.MANY(() => this.SUBRULE(this.edgeClause));
    this.CONSUME(T.LineEnd);
  });

  protected readonly outlineCorner = this.RULE(
    "outlineCorner",
    () => {
      this.SUBRULE(this.expression, { LABEL: "x" });
      this.CONSUME(T.Comma);
      this.SUBRULE2(this.expression, { LABEL: "y" });
    },
    INSIDE_A_LINE,
  );

  protected readonly outline = this.RULE("outline", () => {
    this.CONSUME(START.outline.token);
    this.SUBRULE(this.outlineCorner);
    this.MANY(() => {
      this.CONSUME(WORD.to);
      this.SUBRULE2(this.outlineCorner);
    });
    this.CONSUME(T.LineEnd);
  });

  protected readonly legMeeting = this.RULE(
    "legMeeting",
    () => {
      this.OR([
        { ALT: () => this.CONSUME(WORD.floor, { LABEL: "plain" }) },
        { ALT: () => this.CONSUME(WORD.counter, { LABEL: "plain" }) },
        { ALT: () => this.CONSUME(WORD.pan, { LABEL: "plain" }) },
        { ALT: () => this.CONSUME(WORD.tub, { LABEL: "plain" }) },
        { ALT: () => this.CONSUME(WORD.wall, { LABEL: "plain" }) },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly leg = this.RULE("leg", () => {
    this.CONSUME(START.leg.token);
    this.OR([
      { ALT: () => this.CONSUME(WORD.left, { LABEL: "side" }) },
      { ALT: () => this.CONSUME(WORD.right, { LABEL: "side" }) },
    ]);
    this.SUBRULE(this.expression, { LABEL: "across" });
    this.CONSUME(WORD.down);
    this.SUBRULE2(this.expression, { LABEL: "down" });
    this.OPTION(() => this.SUBRULE(this.legMeeting));
    this.OPTION2(() => this.SUBRULE(this.edgeJoint));
    this.CONSUME(T.LineEnd);
  });

  protected readonly frame = this.RULE("frame", () => {
    this.CONSUME(START.frame.token);
    this.CONSUME(T.Name);
    this.OR([
      { ALT: () => this.CONSUME(WORD.mitre, { LABEL: "join" }) },
      { ALT: () => this.CONSUME(WORD.butt, { LABEL: "join" }) },
    ]);
    this.CONSUME(T.LineEnd);
  });

  protected readonly inset = this.RULE("inset", () => {
    this.CONSUME(START.inset.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly fall = this.RULE("fall", () => {
    this.CONSUME(START.fall.token);
    this.SUBRULE(this.expression);
    this.CONSUME(T.LineEnd);
  });

  protected readonly untiled = this.RULE("untiled", () => {
    this.CONSUME(START.untiled.token);
    this.CONSUME(T.LineEnd);
  });

  protected readonly liningBond = this.RULE(
    "liningBond",
    () => {
      this.OR([
        { ALT: () => this.CONSUME(WORD.stack) },
        {
          ALT: () => {
            this.CONSUME(WORD.running);
            this.CONSUME(T.Length);
          },
        },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly liningTile = this.RULE(
    "liningTile",
    () => {
      this.CONSUME(WORD.full);
      this.CONSUME(WORD.tile);
      this.CONSUME(WORD.from);
      this.OR([
        { ALT: () => this.CONSUME(WORD.left, { LABEL: "from" }) },
        { ALT: () => this.CONSUME(WORD.right, { LABEL: "from" }) },
        { ALT: () => this.CONSUME(WORD.front, { LABEL: "from" }) },
        { ALT: () => this.CONSUME(WORD.back, { LABEL: "from" }) },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly liningAcross = this.RULE(
    "liningAcross",
    () => {
      this.CONSUME(WORD.across);
      this.OR([
        { ALT: () => this.SUBRULE(this.liningTile) },
        { ALT: () => this.SUBRULE(this.centred) },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly liningCourse = this.RULE(
    "liningCourse",
    () => {
      this.CONSUME(WORD.full);
      this.CONSUME(WORD.course);
      this.CONSUME(WORD.from);
      this.OR([
        { ALT: () => this.CONSUME(WORD.bottom, { LABEL: "from" }) },
        { ALT: () => this.CONSUME(WORD.top, { LABEL: "from" }) },
        { ALT: () => this.CONSUME(WORD.front, { LABEL: "from" }) },
        { ALT: () => this.CONSUME(WORD.back, { LABEL: "from" }) },
      ]);
    },
    INSIDE_A_LINE,
  );

  protected readonly liningUp = this.RULE(
    "liningUp",
    () => {
      this.CONSUME(WORD.up);
      this.OR([
        { ALT: () => this.SUBRULE(this.liningCourse) },
        {
          ALT: () => {
            this.CONSUME(WORD.joint);
            this.CONSUME(WORD.at);
            this.SUBRULE(this.expression);
          },
        },
      ]);
    },
    INSIDE_A_LINE,
  );

  /** back mosaic stack joint 1/16 across tile centred on shelf up full course from bottom: inside an opening, laid otherwise than the wall */
  protected readonly lining = this.RULE("lining", () => {
    this.CONSUME(START.lining.token);
    this.CONSUME(T.Name);
    this.OPTION(() => this.SUBRULE(this.liningBond));
    this.OPTION2(() => {
      this.CONSUME(WORD.joint);
      this.SUBRULE(this.expression);
    });
    this.OPTION3(() => this.SUBRULE(this.liningAcross));
    this.OPTION4(() => this.SUBRULE(this.liningUp));
    this.CONSUME(T.LineEnd);
  });

  protected readonly openingStatement = this.RULE("openingStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.at) },
      { ALT: () => this.SUBRULE(this.size) },
      { ALT: () => this.SUBRULE(this.frame) },
      { ALT: () => this.SUBRULE(this.inset) },
      { ALT: () => this.SUBRULE(this.movement) },
      { ALT: () => this.SUBRULE(this.depth) },
      { ALT: () => this.SUBRULE(this.fall) },
      { ALT: () => this.SUBRULE(this.untiled) },
      { ALT: () => this.SUBRULE(this.lining) },
      { ALT: () => this.SUBRULE(this.allow) },
    ]);
  });

  protected readonly opening = this.RULE("opening", () => {
    this.CONSUME(START.opening.token);
    this.SUBRULE(this.heading);
    this.MANY(() => this.SUBRULE(this.openingStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });

  /** Round, or across x up. */
  protected readonly plate = this.RULE(
    "plate",
    () => {
      this.CONSUME(WORD.plate);
      this.SUBRULE(this.expression, { LABEL: "across" });
      this.OPTION(() => {
        this.OR([{ ALT: () => this.CONSUME(WORD.x) }, { ALT: () => this.CONSUME(T.TightTimes) }]);
        this.SUBRULE2(this.expression, { LABEL: "up" });
      });
    },
    INSIDE_A_LINE,
  );

  protected readonly hole = this.RULE("hole", () => {
    this.CONSUME(START.hole.token);
    this.CONSUME(T.Name);
    this.CONSUME(WORD.at);
    this.SUBRULE(this.expression, { LABEL: "x" });
    this.CONSUME(T.Comma);
    this.SUBRULE2(this.expression, { LABEL: "y" });
    this.CONSUME(WORD.across);
    this.SUBRULE3(this.expression, { LABEL: "across" });
    this.OPTION(() => this.SUBRULE(this.plate));
    this.CONSUME(T.LineEnd);
  });

  protected readonly wallStatement = this.RULE("wallStatement", () => {
    this.OR([
      { ALT: () => this.SUBRULE(this.size) },
      { ALT: () => this.SUBRULE(this.outline) },
      { ALT: () => this.SUBRULE(this.leg) },
      { ALT: () => this.SUBRULE(this.edge) },
      { ALT: () => this.SUBRULE(this.opening) },
      { ALT: () => this.SUBRULE(this.hole) },
      { ALT: () => this.SUBRULE(this.lay) },
      { ALT: () => this.SUBRULE(this.set) },
      { ALT: () => this.SUBRULE(this.softJoint) },
      { ALT: () => this.SUBRULE(this.prefer) },
      { ALT: () => this.SUBRULE(this.allow) },
    ]);
  });

  protected readonly wall = this.RULE("wall", () => {
    this.CONSUME(START.wall.token);
    this.SUBRULE(this.titledHeading);
    this.MANY(() => this.SUBRULE(this.wallStatement));
    this.CONSUME(T.CloseBrace);
    this.CONSUME(T.LineEnd);
  });
}

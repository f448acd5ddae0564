import type { Syntax } from "../language/index.js";

/** A statement with the blocks that it stands in, outermost first. */
export interface Placed {
  readonly statement: Syntax.Statement;
  readonly blocks: readonly Syntax.Statement[];
}

/** Every statement of a text in its order, blocks before what is in them. */
export function* statementsOf(
  body: readonly Syntax.Statement[],
  blocks: readonly Syntax.Statement[] = [],
): Generator<Placed> {
  for (const statement of body) {
    yield { statement, blocks };
    if ("body" in statement) yield* statementsOf(statement.body, [...blocks, statement]);
  }
}

/** The statements at an offset, outermost first: the blocks and the statement that hold it. */
export function statementsAt(tree: Syntax.SyntaxTree, offset: number): Syntax.Statement[] {
  const path: Syntax.Statement[] = [];
  let body: readonly Syntax.Statement[] = tree.statements;
  for (;;) {
    const inside = body.find(({ start, end }) => start <= offset && offset <= end);
    if (!inside) return path;
    path.push(inside);
    if (!("body" in inside)) return path;
    body = inside.body;
  }
}

/** The expressions that a statement holds. */
export function expressionsOf(statement: Syntax.Statement): readonly Syntax.Expression[] {
  switch (statement.kind) {
    case "bed":
    case "thickness":
    case "variation":
    case "warpage":
    case "box":
    case "spares":
    case "kerf":
    case "rip":
    case "back-butter":
    case "depth":
    case "inset":
    case "movement":
    case "fall":
    case "between":
      return [statement.length];
    case "covers":
      return [statement.to];
    case "lay-courses":
      return statement.runs.flatMap(({ many }) => (many ? [many] : []));
    case "set":
      return [
        statement.first,
        statement.last,
        ...(statement.joint ? [statement.joint] : []),
        ...statement.tops.flatMap(({ y, at }) =>
          at === null || typeof at === "string" ? [y] : [y, at],
        ),
      ];
    case "soft-joint":
      return [statement.joint.kind === "head" ? statement.joint.at : statement.joint.over];
    case "let":
      return [statement.value];
    case "face":
    case "notch":
      return [statement.first, statement.second];
    case "edge":
      return statement.clauses.flatMap((clause) =>
        clause.kind === "measured"
          ? clause.readings.flatMap(({ at, off }) => [at, off])
          : [clause.width],
      );
    case "outline":
      return statement.corners.flatMap(({ x, y }) => [x, y]);
    case "leg":
      return [
        statement.across,
        statement.down,
        ...(statement.joint ? [statement.joint.width] : []),
      ];
    case "size":
      return [statement.first, statement.second, statement.upTo].filter((each) => each !== null);
    case "at":
      return [statement.x, statement.xTo, statement.y, statement.yTo].filter(
        (each) => each !== null,
      );
    case "wish":
      return statement.wish.wanted === "no-cut" ? [statement.wish.under] : [];
    case "hole":
      return [statement.x, statement.y, statement.across, ...plateLengths(statement)];
    case "lining":
      return [
        statement.bond?.offset,
        statement.joint,
        statement.across?.choice.kind === "centred-at" ? statement.across.choice.x : null,
        statement.up?.choice.kind === "joint" ? statement.up.choice.y : null,
      ].filter((each) => each != null);
    case "bond":
      return statement.offset ? [statement.offset] : [];
    case "joint":
      return statement.max ? [statement.min, statement.max] : [statement.min];
    case "across":
      return statement.choice.kind === "centred-at" ? [statement.choice.x] : [];
    case "up":
      return statement.choice.kind === "joint" ? [statement.choice.y] : [];
    case "limit":
      return typeof statement.value === "string" ? [] : [statement.value];
    default:
      return [];
  }
}

/** The literals and names that an expression is made of. */
export function* leavesOf(
  expression: Syntax.Expression,
): Generator<Syntax.Literal | Syntax.NameUse> {
  switch (expression.kind) {
    case "literal":
    case "name":
      yield expression;
      return;
    case "negation":
      yield* leavesOf(expression.operand);
      return;
    default:
      yield* leavesOf(expression.first);
      for (const { operand } of expression.rest) yield* leavesOf(operand);
  }
}

function plateLengths({ plate }: Syntax.HoleStatement): Syntax.Expression[] {
  if (!plate) return [];
  return plate.up ? [plate.across, plate.up] : [plate.across];
}

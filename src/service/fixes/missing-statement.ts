import { exactLength, NM_PER, type Nm, type Unit } from "../../measure/index.js";
import type { Syntax } from "../../language/index.js";
import { insertInBlock } from "../insert-in-block.js";
import type { Fixer } from "./fix.js";
import { statementAtHead } from "./statement-at-head.js";

const MISSING = /^found no `(\w+)`/;

const IMPERIAL = NM_PER.inch / 16;
const METRIC = NM_PER.mm;

/** Figures to begin with, in sixteenths of an inch or in millimetres; they are there to be measured and changed. */
const BEGINNINGS: Readonly<
  Record<string, { imperial: readonly number[]; metric: readonly number[] }>
> = {
  "tile face": { imperial: [94, 46], metric: [298, 98] },
  "trim face": { imperial: [94, 30], metric: [298, 48] },
  "tile thickness": { imperial: [5], metric: [8] },
  "trim thickness": { imperial: [5], metric: [8] },
  "wall size": { imperial: [960, 1536], metric: [1500, 2400] },
  "opening size": { imperial: [384, 576], metric: [600, 900] },
  "opening at": { imperial: [288, 736], metric: [450, 1150] },
  "lay joint": { imperial: [1], metric: [2] },
};

/** Adds a statement that a block needs, with figures to begin with. */
export const missingStatement: Fixer = (state, diagnostic) => {
  const kind =
    diagnostic.code === "plan/missing" ? MISSING.exec(diagnostic.message)?.[1] : undefined;
  const block = kind === undefined ? null : statementAtHead(state, diagnostic.range);
  if (kind === undefined || !block) return [];
  const statement = beginning(block, kind, state.outcome.plan.units);
  const edit = statement === null ? null : insertInBlock(state, block, [statement]);
  if (statement === null || !edit) return [];
  return [{ title: `Add \`${statement}\``, mends: diagnostic, preferred: true, edits: [edit] }];
};

function beginning(block: Syntax.Statement, kind: string, units: Unit): string | null {
  if (kind === "bond") return "bond running 1/2";
  const figures = BEGINNINGS[`${block.kind} ${kind}`];
  if (!figures) return null;
  const imperial = units === "inch" || units === "foot";
  const unit: Nm = imperial ? IMPERIAL : METRIC;
  const lengths = (imperial ? figures.imperial : figures.metric).map((count) =>
    exactLength(count * unit, units),
  );
  return `${kind} ${lengths.join(kind === "at" ? ", " : " x ")}`;
}

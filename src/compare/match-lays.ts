import { goesStraightOn, type SolvedLay, type SolvedWall } from "../solver/index.js";
import type { Change } from "./comparison.js";

/** Some of a lay's courses, by its own numbers. */
export interface CourseSpan {
  readonly first: number;
  readonly last: number;
}

/** Two lays of which these courses are compared; null for all of a lay. */
export interface LayMatch {
  readonly lays: Change<SolvedLay>;
  readonly spans: { readonly before: CourseSpan | null; readonly after: CourseSpan | null };
  /** Whether they are the lowest courses of what the plan states as one lay. */
  readonly lowest: boolean;
}

/** What the plan states as one lay: what of it is set, and what goes on over that, from the bottom up. */
type Stack = readonly SolvedLay[];

/**
 * The lays of a wall before and after: matched by name; those whose names are left over, in their order. A
 * lay that is set otherwise than before is compared course by course, as if it were one.
 */
export function matchLays({ before, after }: Change<SolvedWall>): readonly LayMatch[] {
  const [old, now] = [stacksOf(before), stacksOf(after)];
  const alone = (stacks: readonly Stack[], others: readonly Stack[]) =>
    stacks.filter((stack) => !others.some((other) => nameOf(other) === nameOf(stack)));
  const [gone, come] = [alone(old, now), alone(now, old)];
  const named = now.map((stack): Change<Stack> => {
    const same = old.find((other) => nameOf(other) === nameOf(stack));
    return { before: same ?? gone[come.indexOf(stack)] ?? null, after: stack };
  });
  const all = [
    ...named,
    ...gone.slice(come.length).map((stack) => ({ before: stack, after: null })),
  ];
  return all.flatMap(matchStack);
}

function stacksOf(wall: SolvedWall | null): readonly Stack[] {
  const lays = wall?.lays ?? [];
  const over = (lay: SolvedLay) => lays.find((each) => goesStraightOn(each.lay, lay.lay));
  const isUpper = (lay: SolvedLay) => lays.some((other) => goesStraightOn(lay.lay, other.lay));
  return lays
    .filter((lay) => !isUpper(lay))
    .map((lowest) => {
      const stack = [lowest];
      for (let next = over(lowest); next; next = over(next)) stack.push(next);
      return stack;
    });
}

function nameOf([lowest]: Stack): string {
  return lowest!.lay.name;
}

function matchStack({ before, after }: Change<Stack>): LayMatch[] {
  const [old, now] = [partsOf(before ?? []), partsOf(after ?? [])];
  if (old.length <= 1 && now.length <= 1) {
    const lays = { before: before?.[0] ?? null, after: after?.[0] ?? null };
    return [{ lays, spans: { before: null, after: null }, lowest: true }];
  }
  const starts = [...new Set([...old, ...now].map(({ under }) => under))].sort((a, b) => a - b);
  return starts.map((under, i): LayMatch => {
    const next = starts[i + 1] ?? Infinity;
    const [a, b] = [old, now].map(
      (parts) => parts.filter((part) => part.under <= under).at(-1) ?? null,
    );
    return {
      lays: { before: a?.lay ?? null, after: b?.lay ?? null },
      spans: {
        before: a ? spanOf(a, under, next) : null,
        after: b ? spanOf(b, under, next) : null,
      },
      lowest: i === 0,
    };
  });
}

/** A lay of a stack, and how many courses of the stack are under it. */
interface StackPart {
  readonly lay: SolvedLay;
  readonly under: number;
}

function partsOf(stack: Stack): readonly StackPart[] {
  let under = 0;
  return stack.map((lay) => {
    const part = { lay, under };
    under += lay.courses.length;
    return part;
  });
}

function spanOf(part: StackPart, under: number, next: number): CourseSpan {
  return { first: under - part.under + 1, last: next - part.under };
}

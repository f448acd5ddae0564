import type { Rule } from "./rule.js";

/** A wall that the solver refused to lay: its tiles are too small for it, or its sides too long. */
export const wallTooLarge: Rule = {
  code: "wall/too-large",
  severity: "error",
  title: "a plan asks for more pieces than can be laid",
  source: "a limit of this program's own",
  limit: null,
  check: ({ wall, refused }) => {
    if (!refused) return [];
    const { pieces, most } = refused;
    return [
      {
        origin: wall.origin,
        blocks: [],
        message:
          `wall "${wall.name}" asks for about ${pieces.toLocaleString("en-US")} pieces and is not laid; ` +
          `at most ${most.toLocaleString("en-US")} in the whole plan are wanted`,
      },
    ];
  },
};

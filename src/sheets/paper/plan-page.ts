import { cautionLines } from "../setting-out/cautions.js";
import { list, section } from "./blocks.js";
import { checkBlocks } from "./check-block.js";
import { findingsBlocks } from "./findings-block.js";
import type { Ground } from "./ground.js";
import { orderOfWork } from "./order-of-work.js";
import type { Block, Page } from "./paper.js";

/** The page for the whole plan: cautions, what stands against it, the order of work, the checks. */
export function planPage(ground: Ground): Omit<Page, "id"> {
  const { solved, diagnostics } = ground;
  const checks = solved.walls.flatMap((wall) => checkBlocks(ground, wall));
  const order = orderOfWork(ground);
  const blocks: Block[] = [
    { kind: "caution", lines: cautionLines(solved) },
    ...findingsBlocks(diagnostics, null),
    ...section("Order of work", order.length > 0 ? [list(order, true)] : []),
    ...section("Check before cutting", checks),
  ];
  return { title: "The whole job", wall: null, blocks };
}

import type { Side } from "../../model/index.js";
import type { TrimPiece } from "../../solver/index.js";

type Hand = "left" | "right";

/**
 * Which hand each end of a frame's piece is when it lies before one with its face up and its finished edge, the
 * one towards the opening, away from one: a sill lies as it is set, a head upside down, jambs on their outer edge.
 */
const HANDS: Readonly<Record<Side, Readonly<Partial<Record<Side, Hand>>>>> = {
  bottom: { left: "left", right: "right" },
  top: { left: "right", right: "left" },
  left: { top: "left", bottom: "right" },
  right: { top: "right", bottom: "left" },
};

/** The mitred ends of a piece on a side of a frame, as hands; left before right. */
export function mitreHands(side: Side, mitre: TrimPiece["mitre"]): Hand[] {
  const hands = mitre.flatMap((end) => HANDS[side][end] ?? []);
  return (["left", "right"] as const).filter((hand) => hands.includes(hand));
}

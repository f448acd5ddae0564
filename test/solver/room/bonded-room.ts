import { solveText } from "../../support/solve-text.js";
import type { SolvedPlan } from "../../../src/solver/index.js";
import { BondEnd } from "../../../src/solver/room/bond-miss.js";

/** Two walls of 60 in that meet in an inside corner, the second's tile covering the first's; 6 x 3 in tile, joints of 1/16 in. */
export interface BondedRoom {
  /** How the first and the second wall start across; open where it isn't said. */
  readonly one?: string;
  readonly two?: string;
  readonly bond?: string;
  readonly wishes?: readonly string[];
  readonly joint?: string;
  readonly up?: string;
}

export function bondedText(parts: BondedRoom = {}): string {
  const { wishes = ["bond goes on"], bond = "stack", joint = "1/16", up = "24" } = parts;
  const wall = (name: string, corners: string, across: string | undefined, height: string) =>
    `wall ${name} "Wall" {
  size 60 x 48
  ${corners}
  lay field {
    bond ${bond}
    joint ${joint}
    up joint at ${height}
    ${across ? `across ${across}` : ""}
  }
}
`;
  const prefer = wishes.length > 0 ? `prefer {\n  ${wishes.join("\n  ")}\n}\n` : "";
  return (
    `plan "Room"\nunits inch\nbed 1/16\n${prefer}` +
    `tile field {\n  face 6 x 3\n  thickness 1/16\n  variation 1/64\n}\n` +
    wall("one", "left wall movement 1/8\n  right corner two under", parts.one, "24") +
    wall("two", "left corner one over movement 1/8\n  right wall movement 1/8", parts.two, up)
  );
}

export function bondedRoom(parts: BondedRoom = {}): SolvedPlan {
  return solveText(bondedText(parts)).solved;
}

/** The second wall, which covers, and the first at their corner. */
export function endsOf({ walls: [one, two] }: SolvedPlan): readonly [BondEnd, BondEnd] {
  const [over, under] = [two!, one!].map(({ wall, region, lays: [lay] }, i) => {
    const { lattice } = lay!;
    return new BondEnd({ wall, region, lattice }, i === 0 ? "left" : "right");
  });
  return [over!, under!];
}

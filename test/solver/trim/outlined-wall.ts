import { solveClean } from "../../support/solve-text.js";

/**
 * A wall with these lines, tile of 100 x 50 mm with joints of 2 and trim 20 wide, 1000 long. That no trim
 * lies on tile or on other trim is held, too.
 */
export function outlinedWall(outline: string, ...sides: readonly string[]) {
  return solveClean(`plan "outlined"
units mm
tile field {
  face 100 x 50
  thickness 8
}
trim edging {
  face 1000 x 20
  thickness 8
}
wall back {
  outline ${outline}
  bottom floor movement 3
${sides.join("\n")}
  lay field {
    bond stack
    joint 2
    across tile centred on wall
    up full course from bottom
  }
}
`);
}

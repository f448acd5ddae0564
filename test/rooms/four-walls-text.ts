/** A wall of the four-wall room below, but for what stands in it. */
interface WallLines {
  readonly name: string;
  readonly across: string;
  readonly left: string;
  readonly right: string;
  readonly bottom: string;
  readonly start: string;
  readonly inside?: string;
}

function wallText({ name, across, left, right, bottom, start, inside = "" }: WallLines): string {
  return `wall ${name} "${name}" {
  size ${across} x 48
  left corner ${left} movement 1/8
  right corner ${right} movement 1/8
  bottom pan ${bottom}movement 1/8
  top ceiling movement 1/8
${inside}  lay field {
    bond stack
    joint 1/16
    across ${start}
    up joint at 24
  }
}
`;
}

const WINDOW = `  window sash {
    at 19 3/4, 20 17/32
    size 22 x 13 5/16
    movement 1/8
  }
`;

const NICHE = `  niche shelf {
    at 9 5/8, 17 27/32
    size 12 3/16 x 12 5/16
    movement 0
  }
`;

/**
 * Four walls of a shower, from left to right: 6 x 3 in tile of 5/16 in on a bed of 1/8 in, so that 7/16 in stand on a wall; joints of
 * 1/16 in, soft joints of 1/8 in. The pan rises by 0.32 in from the left to the right, in the middle 32 in of the back and the front.
 */
export const FOUR_WALLS = `plan "Four walls"
units inch
bed 1/8
tile field {
  face 6 x 3
  thickness 5/16
  variation 1/64
}
${wallText({
  name: "back",
  across: "61 1/2",
  left: "left-wall under",
  right: "right-wall under",
  bottom: "measured 14: 0, 46: 0.32 ",
  start: "tile centred on wall",
  inside: WINDOW,
})}${wallText({
  name: "right-wall",
  across: "37 3/8",
  left: "back over",
  right: "front under",
  bottom: "measured 0: 0.32 ",
  start: "wrapped from back added",
  inside: NICHE,
})}${wallText({
  name: "front",
  across: "61 1/2",
  left: "right-wall over",
  right: "left-wall over",
  bottom: "measured 15 1/2: 0.32, 47 1/2: 0 ",
  start: "wrapped from right-wall added",
})}${wallText({
  name: "left-wall",
  across: "37 3/8",
  left: "front under",
  right: "back over",
  bottom: "",
  start: "wrapped from back added",
})}`;

/** The lines of a plan of two walls round an outside corner that differ from a plain one. */
export interface OutsideText {
  /** The right of the back wall, and the left of the pier. */
  readonly right?: string;
  readonly left?: string;
  readonly across?: string;
  readonly pier?: { readonly across?: string; readonly tile?: string };
}

/** 6 x 3 in tile of 5/16 in on a bed of 1/8 in, so that 7/16 in stand on a wall; joints of 1/16 in. */
export function outsideText(parts: OutsideText = {}): string {
  return `plan "Test"
units inch
bed 1/8
tile field {
  face 6 x 3
  thickness 5/16
  variation 1/64
}
tile thick {
  face 6 x 3
  thickness 3/8
  variation 1/64
}
trim nose {
  face 6 x 2
  thickness 5/16
}
wall back "Back wall" {
  size 60 x 24
  left free
  bottom free
  top free
  right ${parts.right ?? "outside pier over"}
  lay field {
    bond stack
    joint 1/16
    across ${parts.across ?? "full tile from right"}
    up full course from bottom
  }
}
wall pier "Pier" {
  size 24 x 24
  left ${parts.left ?? "outside back under joint 1/16"}
  right free
  bottom free
  top free
  lay ${parts.pier?.tile ?? "field"} {
    bond stack
    joint 1/16
    across ${parts.pier?.across ?? "full tile from left"}
    up full course from bottom
  }
}
`;
}

/** What of the room is left open or stands beside it. */
export interface CollidingRoom {
  /** How high the back wall is tiled, and where its window begins across. */
  readonly height?: string;
  readonly across?: string;
  readonly joint?: string;
  /** What the right side of the end wall meets. */
  readonly beyond?: string;
}

/**
 * A room of two walls whose wishes collide: courses can't both meet those of the end wall, whose joint is stated, and be
 * whole over the window's sill.
 */
export function collidingRoom({
  height = "30",
  across = "12",
  joint = "1/16",
  beyond = "free",
}: CollidingRoom = {}): string {
  return `units inch
bed 1/8

prefer {
  courses meet
  whole courses at sill of sash
}

tile field "3 x 6" {
  face 6 x 3
  thickness 3/8
  variation 1/32
}

wall back "Back wall" {
  size 40 x ${height}
  left free
  right corner end under movement 1/8
  bottom floor movement 1/8
  top free

  window sash {
    at ${across}, 13 1/2
    size 12 x 12
    movement 1/8
  }

  lay field {
    bond stack
    joint ${joint}
  }
}

wall end "End wall" {
  size 30 x 30
  left corner back over movement 1/8
  right ${beyond}
  bottom floor movement 1/8
  top free

  lay field {
    bond stack
    joint ${joint}
    up joint at 12
  }
}
`;
}

/** The same with the joint, the window's place and the height left to the solver. */
export const OPEN_ROOM: CollidingRoom = {
  height: "30 to 34",
  across: "12 to 14",
  joint: "1/16 to 1/8",
};

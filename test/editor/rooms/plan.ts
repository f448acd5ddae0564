/**
 * Three walls of a room with wishes that collide, round an inside and an outside corner, and a half wall of two lays: what
 * plans say of rooms, and of walls that are more than one rectangle of one tile.
 */
export const ROOM = `units inch
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

tile dado "8 x 8" {
  face 7 7/8 x 7 7/8
  thickness 3/8
  variation 1/32
}

wall back "Back wall" {
  size 40 x 30 to 34
  left free
  right corner end under movement 1/8
  bottom floor movement 1/8
  top free

  window sash {
    at 12 to 14, 13 1/2
    size 12 x 12
    movement 1/8
  }

  lay field {
    bond stack
    joint 1/16 to 1/8
  }
}

wall end "End wall" {
  size 30 x 30
  left corner back over movement 1/8
  right outside pier over
  bottom floor movement 1/8
  top free

  lay field {
    bond stack
    joint 1/16 to 1/8
    up joint at 12
  }
}

wall pier "Pier" {
  size 16 x 30
  left outside end under joint 1/16
  right free
  bottom floor movement 1/8
  top free

  lay field {
    bond stack
    joint 1/16 to 1/8
    across wrapped from end added
    up joint at 12
  }
}

wall half "Half wall" {
  outline 0, 0 to 48, 0 to 48, 30 to 24, 48 to 0, 48
  left free
  right free
  bottom floor movement 1/8
  top free

  lay dado {
    bond stack
    joint 1/8
    courses 2 of dado
  }

  lay field {
    over dado
    between 1/8
    bond running 1/2
    joint 1/16
  }
}
`;

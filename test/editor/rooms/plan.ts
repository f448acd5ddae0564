import { collidingRoom, OPEN_ROOM } from "../../rooms/colliding-room.js";

/**
 * Three walls of a room with wishes that collide, round an inside and an outside corner, and a half wall of two lays: what
 * plans say of rooms, and of walls that are more than one rectangle of one tile.
 */
export const ROOM = `${collidingRoom({ ...OPEN_ROOM, beyond: "outside pier over" })}
tile dado "8 x 8" {
  face 7 7/8 x 7 7/8
  thickness 3/8
  variation 1/32
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

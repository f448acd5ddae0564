/** A wall in whole inches with a framed window, a hidden strip and a start for the solver to choose. */
export const WALL = `plan "Sheet bench"
units inch
bed 1/8
tile field "4 x 4 tile" {
  face 4 x 4
  thickness 3/8
}
trim nose "bullnose" {
  face 4 x 1
  thickness 3/8
}
wall back "Back wall" {
  size 40 x 24
  bottom floor movement 1/8
  left corner side under movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8
  window sash {
    at 16, 8
    size 8 x 8
    frame nose mitre
  }
  lay field {
    bond running 1/2
    joint 1/8
    across tile centred on wall
  }
}
wall side "Side wall" {
  size 20 x 24
  bottom floor movement 1/8
  left wall movement 1/8
  right corner back over movement 1/8
  top ceiling movement 1/8
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up full course from bottom
  }
}
`;

/** A small plan with nothing to tell: one wall, two courses of three whole tiles between soft joints. */
export const CLEAN = `plan "Test bench"
units inch
bed 1/8
tile field "4 x 4 tile" {
  face 4 x 4
  thickness 1/4
  variation 1/64
}
wall back "Back wall" {
  size 12 3/8 x 8 5/16
  bottom counter movement 1/8
  left wall movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8
  lay field {
    bond stack
    joint 1/16
    across full tile from left
    up full course from bottom
  }
}
`;

/** The same with a joint under three times the tile's variation: one error, on line 17. */
export const FAULTY = CLEAN.replace("variation 1/64", "variation 1/16");

/** The same with the fault allowed in its lay. */
export const ALLOWED = FAULTY.replace(
  "bond stack",
  `bond stack\n    allow joint/too-narrow "a dry run looked well"`,
);

/** The same with a line that can't be understood. */
export const BROKEN = CLEAN.replace("  bottom counter", "  botom counter");

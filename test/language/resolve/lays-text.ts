const STOCK = `tile field {
  face 4 x 4
  thickness 1/4
}
tile liner {
  face 4 x 1
  thickness 1/4
}
`;

/** A wall of 24 x 24 in without joints at its sides; `lays` are its lays. */
export function wallOfLays(lays: string): string {
  return `${STOCK}wall back {
  size 24 x 24
  left free
  right free
  bottom free
  top free
${lays}
}
`;
}

const START = "bond stack\n joint 0\n across full tile from left";

/** Two courses of field, one of liner, and field over them; no joints. */
export const STACKED = wallOfLays(
  `lay field {\n ${START}\n up full course from bottom\n courses 2 of field, 1 of liner, rest of field\n}`,
);

/** A panel of liner in the field. */
export const PANEL = wallOfLays(
  `lay liner {\n ${START}\n up full course from bottom\n at 8, 8\n size 8 x 4\n}\n` +
    `lay field {\n ${START}\n up full course from bottom\n}`,
);

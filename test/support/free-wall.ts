/** The parts of a plan that a test of the published arithmetic varies; lengths as the text has them. */
export interface FreeWall {
  readonly units?: "inch" | "mm";
  readonly face: string;
  readonly size: string;
  readonly joint: string;
  /** Statements of the wall; every side is free unless one says otherwise. */
  readonly wall?: readonly string[];
  readonly across?: string;
  readonly up?: string;
  readonly bond?: string;
}

const SIDES = ["left", "right", "bottom", "top"] as const;

/** A plan of one wall whose tile runs to its very edges, so that nothing but the arithmetic decides. */
export function freeWall(parts: FreeWall): string {
  const { units = "inch", face, size, joint, wall = [], across, up, bond = "stack" } = parts;
  const unstated = SIDES.filter((side) => !wall.some((line) => line.startsWith(side)));
  return [
    'plan "published"',
    `units ${units}`,
    "tile field {",
    `  face ${face}`,
    "  thickness 0.25in",
    "}",
    "wall back {",
    `  size ${size}`,
    ...unstated.map((side) => `  ${side} free`),
    ...wall.map((line) => `  ${line}`),
    "  lay field {",
    `    bond ${bond}`,
    `    joint ${joint}`,
    ...(across ? [`    across ${across}`] : []),
    ...(up ? [`    up ${up}`] : []),
    "  }",
    "}",
    "",
  ].join("\n");
}

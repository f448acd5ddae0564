/** Four walls of 60 in, each set after the one at its left and covering its end, whose bond goes on round the room. */
export interface WrappedRoom {
  /** What the walls are called, round the room from left to right. */
  readonly names?: readonly string[];
  /** In which order they are declared. */
  readonly declared?: readonly string[];
  /** How the walls behind the first start, `PREVIOUS` standing for the wall at their left. */
  readonly across?: string;
  readonly first?: string;
  readonly bond?: string;
}

const NAMES = ["one", "two", "three", "four"];

/** 6 x 3 in tile, joints of 1/16 in; what stands on a wall is 1/8 in, as is each corner's joint. */
export function wrappedRoom(parts: WrappedRoom = {}): string {
  const names = parts.names ?? NAMES;
  const text = new Map(
    names.map((name, i) => {
      const [before, after] = [names[(i + 3) % 4]!, names[(i + 1) % 4]!];
      const across =
        i === 0
          ? (parts.first ?? "tile centred on wall")
          : (parts.across ?? "wrapped from PREVIOUS added").replace("PREVIOUS", before);
      return [
        name,
        `wall ${name} "Wall" {
  size 60 x 48
  left corner ${before} over movement 1/8
  right corner ${after} under movement 1/8
  lay field {
    bond ${parts.bond ?? "stack"}
    joint 1/16
    across ${across}
    up joint at 24
  }
}`,
      ];
    }),
  );
  const walls = (parts.declared ?? names).map((name) => text.get(name)!);
  const tile = "tile field {\n  face 6 x 3\n  thickness 1/16\n  variation 1/64\n}";
  return `plan "Room"\nunits inch\nbed 1/16\n${tile}\n${walls.join("\n")}\n`;
}

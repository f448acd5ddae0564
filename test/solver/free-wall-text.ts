/** What is said of a wall of two lays, a dado of two courses and a field over it. */
export interface PanelText {
  readonly wishes?: string;
  readonly openings?: string;
  /** Further lines of the dado and of the field. */
  readonly dado?: string;
  readonly field?: string;
  /** What the field says of its place but that it is over the dado. */
  readonly over?: string;
  /** How high the wall is. */
  readonly height?: string;
  /** Further lays. */
  readonly more?: string;
  /** The faces of both tiles. */
  readonly faces?: readonly [dado: string, field: string];
  readonly size?: string;
  readonly joint?: string;
}

/** Sides and top are free; the dado's two courses end at 12 1/8 in and the field begins at 12 1/4 in, unless faces say otherwise. */
export function panelText(parts: PanelText = {}): string {
  const [dado, field] = parts.faces ?? ["6 x 6", "4 x 4"];
  const { joint = "1/8" } = parts;
  return `units inch
bed 1/8
${parts.wishes ?? ""}
tile dado {
  face ${dado}
  thickness 5/16
}
tile field {
  face ${field}
  thickness 5/16
}
wall back {
  size ${parts.size ?? "40"} x ${parts.height ?? "36"}
  left free
  right free
  bottom free
  top free
  ${parts.openings ?? ""}
  lay dado {
    bond stack
    joint ${joint}
    courses 2
    ${parts.dado ?? ""}
  }
  lay field {
    bond stack
    joint ${joint}
    over dado
    ${parts.over ?? ""}
    ${parts.field ?? ""}
  }
  ${parts.more ?? ""}
}
`;
}

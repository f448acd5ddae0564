/** The starts of the dado and the field on two walls, and how high the dado is on the second. */
export interface DadoText {
  readonly back?: DadoStarts;
  readonly side?: DadoStarts;
  readonly sideTop?: string;
}

interface DadoStarts {
  readonly dado?: string;
  readonly field?: string;
}

const FULL = "full tile from left";

/**
 * Two walls at an inside corner: a dado of 8 x 4 in tile up to 24 in, 6 x 3 in tile on it, joints of 1/16 in. What stands on a wall is
 * 1/8 in, as is the corner's joint. Starts are given as the lines of a lay. The field is stated first.
 */
export function dadoText({ back = {}, side = {}, sideTop = "24" }: DadoText = {}): string {
  return `plan "Dado"
units inch
bed 1/16
tile dado {
  face 8 x 4
  thickness 1/16
}
tile field {
  face 6 x 3
  thickness 1/16
}
${wall("back", "right corner side under movement 1/8", back, "24")}
${wall("side", "left corner back over movement 1/8", side, sideTop)}
`;
}

function wall(name: string, corner: string, { dado, field }: DadoStarts, top: string): string {
  return `wall ${name} {
  size 60 x 48
  ${corner}
  lay field {
    over dado
    bond stack
    joint 1/16
    ${field ?? `across ${FULL}`}
  }
  lay dado {
    covers bottom to ${top}
    bond stack
    joint 1/16
    ${dado ?? `across ${FULL}`}
  }
}`;
}

import type { Nm } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
import { type Materials, mortarBags } from "../../takeoff/index.js";

/** What is bought of a material; null where the plan doesn't say how it is sold, or for how much. */
export interface Bought {
  readonly count: number | null;
  /** Hundredths of the plan's own money. */
  readonly cost: number | null;
}

/** Mortar under tile: the area, the volume, and what is bought. */
interface Bed {
  readonly doubleArea: bigint;
  readonly volume: number;
  readonly bags: Bought;
}

interface Membrane {
  readonly doubleArea: bigint;
  /** What of it are the sides of niches and windows. */
  readonly doubleNicheSides: bigint;
}

/** The materials of all walls together. Volumes are mm³, masses mg, areas twice over in nm². */
export interface MaterialsToBuy {
  readonly mortar: Bed & { readonly toCome: Bed | null };
  readonly grout: { readonly volume: number; readonly mass: number | null; readonly bags: Bought };
  readonly sealant: { readonly length: Nm; readonly volume: number; readonly tubes: Bought };
  readonly membrane: Membrane & { readonly toCome: Membrane | null };
}

/** `density` is grams in a litre, so mm³ times it over this are milligrams. */
const MM3_G_PER_LITRE_IN_MG = 1_000;

/** Bags and tubes are rounded up once, over all walls, since what is left of one serves the next. */
export function materialsToBuy(plan: Plan, materials: Materials): MaterialsToBuy {
  const { grout, sealant } = plan;
  const groutVolume = sum(materials.grout.map(({ volume }) => volume));
  const density = grout?.density ?? null;
  const mass = density === null ? null : Math.ceil((groutVolume * density) / MM3_G_PER_LITRE_IN_MG);
  const sealantVolume = sum(materials.sealant.map(({ volume }) => volume));
  return {
    mortar: {
      ...bedOf(plan, materials.mortar),
      toCome: materials.mortar.some(({ toCome }) => toCome)
        ? bedOf(
            plan,
            materials.mortar.map((each) => each.toCome ?? each),
          )
        : null,
    },
    grout: {
      volume: groutVolume,
      mass,
      bags: bought(
        mass === null || !grout?.bag ? null : Math.ceil(mass / grout.bag.mass),
        grout?.price,
      ),
    },
    sealant: {
      length: sum(materials.sealant.map(({ length }) => length)),
      volume: sealantVolume,
      tubes: bought(
        sealant?.tube == null ? null : Math.ceil(sealantVolume / sealant.tube),
        sealant?.price,
      ),
    },
    membrane: {
      ...membraneOf(materials.membrane),
      toCome: materials.membrane.some(({ stands }) => stands)
        ? membraneOf(materials.membrane.filter(({ stands }) => !stands))
        : null,
    },
  };
}

function membraneOf(walls: readonly Membrane[]): Membrane {
  return {
    doubleArea: sumOfAreas(walls),
    doubleNicheSides: walls.reduce((sum, each) => sum + each.doubleNicheSides, 0n),
  };
}

function bedOf(plan: Plan, walls: readonly Pick<Bed, "doubleArea" | "volume">[]): Bed {
  const doubleArea = sumOfAreas(walls);
  return {
    doubleArea,
    volume: sum(walls.map(({ volume }) => volume)),
    bags: bought(mortarBags(plan, doubleArea)?.bought ?? null, plan.mortar?.price),
  };
}

function bought(count: number | null, price: number | null | undefined): Bought {
  return { count, cost: count === null || price == null ? null : count * price };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function sumOfAreas(parts: readonly { readonly doubleArea: bigint }[]): bigint {
  return parts.reduce((total, { doubleArea }) => total + doubleArea, 0n);
}

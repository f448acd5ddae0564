import type { Nm } from "../../src/measure/index.js";
import type { Plan, Wall } from "../../src/model/index.js";
import { type LoneLay, loneLays } from "../../src/solver/lone-lays.js";
import type { WallChosen } from "../../src/solver/room/index.js";
import { planOf } from "../language/telling.js";
import { type PanelText, panelText } from "./free-wall-text.js";

/** The lays of the wall of a dado and a field, each alone, by their names. */
export function lonePanel(parts: PanelText): {
  plan: Plan;
  wall: Wall;
  all: readonly LoneLay[];
  lone: (name: string) => LoneLay;
} {
  const plan = planOf(panelText(parts));
  const [wall] = plan.walls;
  const { lays } = loneLays(plan, wall!);
  const lone = (name: string) => lays.find(({ lay }) => lay.name === name)!;
  return { plan, wall: wall!, all: lays, lone };
}

/** What a search may find for a lay: a full tile from the right, a full course from the bottom and a joint. */
export function foundFor(lone: LoneLay, joint: Nm, wall: Wall = lone.wall): WallChosen {
  const across = { kind: "full-tile", from: "right" } as const;
  const up = { kind: "full-course", from: "bottom" } as const;
  return { wall, chosen: { joint, across, up, choice: null } };
}

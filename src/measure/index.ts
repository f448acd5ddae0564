export type { Nm, Unit } from "./nanometre.js";
export { divideRounded, LONGEST, NM_PER, toMillimetres } from "./nanometre.js";

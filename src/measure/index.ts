export type { Nm, Unit } from "./nanometre.js";
export { divideRounded, LONGEST, NM_PER, scaleRounded, toMillimetres } from "./nanometre.js";

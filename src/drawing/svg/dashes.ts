import { rounded } from "../picture.js";

/** A dash pattern given in ems, as an attribute. */
export function dashes(ems: readonly number[], em: number): string {
  return ems.map((each) => rounded(each * em)).join(" ");
}

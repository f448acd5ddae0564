import { formatLength, type Nm, NM_PER, type Unit } from "../../measure/index.js";

/** Twice the square nanometres of a square metre and of a square foot. */
const DOUBLED_M2 = 2n * BigInt(NM_PER.m) ** 2n;
const DOUBLED_SQFT = 2n * BigInt(NM_PER.foot) ** 2n;
const HUNDRED = 100n;

const MM3_PER_LITRE = 1_000_000;
/** 25.4 cubed, exactly. */
const MM3_PER_CUBIC_INCH = 16_387.064;
const MG_PER_KG = 1_000_000;
/** NIST Handbook 44, Appendix C. */
const MG_PER_POUND = 453_592.37;

function isImperial(units: Unit): boolean {
  return units === "inch" || units === "foot";
}

/** `39.33 sq ft` or `3.65 m²`, to the nearest hundredth; `doubled` is twice the area in nm². */
export function areaWords(doubled: bigint, units: Unit): string {
  const [per, unit] = isImperial(units) ? [DOUBLED_SQFT, "sq ft"] : [DOUBLED_M2, "m²"];
  return `${decimal(Number((doubled * HUNDRED * 2n + per) / (2n * per)), 2)} ${unit}`;
}

/** A long run of trim or sealant: `51' 11 15/16"`, `15.85 m`. */
export function runWords(nm: Nm, units: Unit): string {
  return formatLength(nm, isImperial(units) ? "foot" : "m");
}

/** `52.4 cu in (0.86 l)` or `0.86 l`; cubic millimetres. */
export function volumeWords(mm3: number, units: Unit): string {
  const own = ownVolumeWords(mm3, units);
  return isImperial(units) ? `${own} (${ownVolumeWords(mm3, "mm")})` : own;
}

/** `52.4 cu in` or `0.86 l`; cubic millimetres. */
export function ownVolumeWords(mm3: number, units: Unit): string {
  return isImperial(units)
    ? `${(mm3 / MM3_PER_CUBIC_INCH).toFixed(1)} cu in`
    : `${(mm3 / MM3_PER_LITRE).toFixed(2)} l`;
}

/** `3.1 lb (1.39 kg)` or `1.39 kg`; milligrams. */
export function massWords(mg: number, units: Unit): string {
  const kilograms = `${(mg / MG_PER_KG).toFixed(2)} kg`;
  return isImperial(units) ? `${(mg / MG_PER_POUND).toFixed(1)} lb (${kilograms})` : kilograms;
}

/** Hundredths of the plan's own money, which has no sign here: `127.50`. */
export function moneyWords(hundredths: number): string {
  return decimal(hundredths, 2);
}

/** A part of a whole in percent, to the tenth. */
export function percentWords(part: bigint, whole: bigint): string {
  if (whole === 0n) return "0.0 %";
  return `${decimal(Number((part * 2000n + whole) / (2n * whole)), 1)} %`;
}

function decimal(parts: number, decimals: number): string {
  const digits = `${parts}`.padStart(decimals + 1, "0");
  return `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
}

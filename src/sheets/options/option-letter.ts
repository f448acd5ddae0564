/** A, B, C ...: an option's name within its wall, the best first. */
export function optionLetter(i: number): string {
  return String.fromCharCode("A".charCodeAt(0) + i);
}

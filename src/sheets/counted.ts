/** `1 piece`, `4 pieces`, `0 pieces`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** `1 piece`, `4 pieces`, `0 pieces`; `several` where it is not the noun with an s. */
export function counted(count: number, noun: string, several = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : several}`;
}

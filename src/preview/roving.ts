/// <reference lib="dom" />

/**
 * One stop of the Tab key for a row of buttons; arrows, Home and End go from one to the next (the
 * toolbar pattern of the ARIA Authoring Practices Guide).
 */
export function roveFocus(list: HTMLElement): void {
  list.addEventListener("keydown", (event) => {
    const buttons = buttonsOf(list);
    const at = buttons.indexOf(document.activeElement as HTMLButtonElement);
    const to = at < 0 ? undefined : stepFrom(at, buttons.length, event.key);
    if (to === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    buttons[to]!.focus();
  });
  list.addEventListener("focusin", ({ target }) => {
    for (const button of buttonsOf(list)) button.tabIndex = button === target ? 0 : -1;
  });
}

/** Makes the button with this index, or the first, the one stop. */
export function setStop(list: HTMLElement, index: number): void {
  const buttons = buttonsOf(list);
  const stop = buttons[index] ?? buttons[0];
  for (const button of buttons) button.tabIndex = button === stop ? 0 : -1;
}

function buttonsOf(list: HTMLElement): HTMLButtonElement[] {
  return Array.from(list.querySelectorAll("button"));
}

function stepFrom(at: number, count: number, key: string): number | undefined {
  switch (key) {
    case "ArrowRight":
    case "ArrowDown":
      return Math.min(count - 1, at + 1);
    case "ArrowLeft":
    case "ArrowUp":
      return Math.max(0, at - 1);
    case "Home":
      return 0;
    case "End":
      return count - 1;
    default:
      return undefined;
  }
}

/// <reference lib="dom" />

/** Menus (details elements) close at Escape and at a press elsewhere, as menus do. */
export function closeMenus(page: HTMLElement): void {
  page.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    for (const menu of openMenus(page)) {
      menu.open = false;
      menu.querySelector("summary")!.focus();
    }
  });
  page.addEventListener("pointerdown", ({ target }) => {
    for (const menu of openMenus(page)) if (!menu.contains(target as Node)) menu.open = false;
  });
}

function openMenus(page: HTMLElement): HTMLDetailsElement[] {
  return Array.from(page.querySelectorAll<HTMLDetailsElement>("details.menu[open]"));
}

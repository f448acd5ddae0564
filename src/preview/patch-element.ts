/// <reference lib="dom" />

/**
 * Makes an element in the page like another one that is not in it, and leaves all that is alike
 * untouched: a keystroke changes little of a picture, and the browser lays out and paints only that.
 */
export function patchElement(old: Element, next: Element): void {
  if (old.isEqualNode(next)) return;
  patchAttributes(old, next);
  const wanted = Array.from(next.childNodes);
  wanted.forEach((child, i) => {
    const there = old.childNodes[i];
    if (!there) old.append(child);
    else if (areSameThing(there, child)) patchElement(there as Element, child as Element);
    else if (!there.isEqualNode(child)) there.replaceWith(child);
  });
  while (old.childNodes.length > wanted.length) old.lastChild!.remove();
}

function patchAttributes(old: Element, next: Element): void {
  for (const name of old.getAttributeNames()) {
    if (!next.hasAttribute(name)) old.removeAttribute(name);
  }
  for (const name of next.getAttributeNames()) {
    const value = next.getAttribute(name)!;
    if (old.getAttribute(name) !== value) old.setAttribute(name, value);
  }
}

/** Elements of one name and id: worth a look inside. */
function areSameThing(a: Node, b: Node): boolean {
  return (
    a.nodeType === Node.ELEMENT_NODE &&
    a.nodeName === b.nodeName &&
    (a as Element).id === (b as Element).id
  );
}

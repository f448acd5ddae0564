/** What a page's id is made from: letters, digits and hyphens, of any case, no more than fit a file's name. */
const LONGEST = 60;

/** An id for each name, all different also where capitals don't count. */
export function pageIds(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    const plain = name.replace(/[^A-Za-z0-9-]+/g, "-").slice(0, LONGEST) || "page";
    let id = plain;
    for (let n = 2; taken.has(id.toLowerCase()); n++) id = `${plain}-${n}`;
    taken.add(id.toLowerCase());
    return id;
  });
}

/**
 * Each part of something beside the same part of another that says the same, wherever the two are written; null where
 * they say anything else. What they are of is plain data, and small.
 */
export function twinsOf(a: object, b: object): ReadonlyMap<object, object> | null {
  const twins = new Map<object, object>();
  return pairUp(a, b, twins) ? twins : null;
}

function pairUp(a: unknown, b: unknown, twins: Map<object, object>): boolean {
  if (!isObject(a) || !isObject(b)) return a === b;
  if (twins.get(a) === b) return true;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  twins.set(a, b);
  return keys.every((key) => key === "origin" || (key in b && pairUp(a[key], b[key], twins)));
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

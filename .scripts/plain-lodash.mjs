// What Chevrotain asks of lodash, for the arrays and plain objects that it gives: lodash's own are made
// for anything, and take a twentieth of a command's time to read its first text.

export const assign = Object.assign;
export const clone = (of) => (Array.isArray(of) ? [...of] : { ...of });
export const compact = (list) => list.filter(Boolean);
export const difference = (list, others) => list.filter((one) => !others.includes(one));
export const drop = (list, many = 1) => list.slice(many);
export const dropRight = (list, many = 1) => list.slice(0, Math.max(list.length - many, 0));
export const every = (of, holds) => listOf(of).every(holds);
export const filter = (of, holds) => listOf(of).filter(holds);
export const find = (of, holds) => listOf(of).find(holds);
export const first = (list) => list?.[0];
export const flatMap = (of, change) => listOf(of).flatMap(change);
export const flatten = (list) => list.flat();
export const has = (of, key) => of != null && Object.hasOwn(of, key);
export const identity = (one) => one;
export const includes = (of, one) => listOf(of).includes(one);
export const indexOf = (list, one) => list.indexOf(one);
export const isArray = Array.isArray;
export const isEmpty = (of) => listOf(of).length === 0;
export const isFunction = (of) => typeof of === "function";
export const isObject = (of) => (typeof of === "object" && of !== null) || isFunction(of);
export const isRegExp = (of) => of instanceof RegExp;
export const isString = (of) => typeof of === "string";
export const isUndefined = (of) => of === undefined;
export const keys = (of) => Object.keys(of ?? {});
export const last = (list) => list?.at(-1);
export const noop = () => undefined;
export const reject = (of, holds) => listOf(of).filter((one) => !holds(one));
export const some = (of, holds) => listOf(of).some(holds);
export const uniq = (list) => [...new Set(list)];
export const upperFirst = (text) => text.charAt(0).toUpperCase() + text.slice(1);
export const values = (of) => Object.values(of ?? {});

export function defaults(of, others) {
  for (const key of Object.keys(others)) if (of[key] === undefined) of[key] = others[key];
  return of;
}

export function forEach(of, tell) {
  if (!Array.isArray(of)) return eachEntry(of, tell);
  for (let i = 0; i < of.length; i++) if (tell(of[i], i) === false) return;
}

function eachEntry(of, tell) {
  for (const key of keys(of)) if (tell(of[key], key) === false) return;
}

export function groupBy(list, keyOf) {
  const groups = {};
  for (const one of list) (groups[keyOf(one)] ??= []).push(one);
  return groups;
}

export function map(of, change) {
  if (Array.isArray(of)) return of.map(change);
  return keys(of).map((key) => change(of[key], key));
}

export function pickBy(of, holds) {
  const picked = {};
  for (const key of keys(of)) if (holds(of[key], key)) picked[key] = of[key];
  return picked;
}

export function reduce(of, add, from) {
  if (Array.isArray(of)) return of.reduce(add, from);
  return keys(of).reduce((sum, key) => add(sum, of[key], key), from);
}

function listOf(of) {
  return Array.isArray(of) ? of : values(of);
}

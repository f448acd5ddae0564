// Checks of what comes from the other side: a webview and its extension trust nothing that they are posted.

export type Check = (value: unknown) => boolean;
export type Shape = Readonly<Record<string, Check>>;
/** A check for each key of each message. */
export type Shapes<Message extends { readonly type: string }> = {
  readonly [Type in Message["type"]]: Readonly<
    Record<Exclude<keyof Extract<Message, { type: Type }>, "type">, Check>
  >;
};

export const isText: Check = (value) => typeof value === "string";
export const isFlag: Check = (value) => typeof value === "boolean";
export const isNumber: Check = (value) => typeof value === "number" && Number.isFinite(value);
export const isCount: Check = (value) => Number.isSafeInteger(value) && (value as number) >= 0;
export const isList: Check = (value) => Array.isArray(value);
export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

export function objectOf(shape: Shape): Check {
  return (value) =>
    isObject(value) && Object.entries(shape).every(([key, check]) => check(value[key]));
}

export function orNull(check: Check): Check {
  return (value) => value === null || check(value);
}

/** Whether a value is one of the messages, with all that belongs to it. */
export function isMessage(shapes: Readonly<Record<string, Shape>>, value: unknown): boolean {
  if (!isObject(value) || typeof value.type !== "string") return false;
  const { type } = value;
  return Object.hasOwn(shapes, type) && objectOf(shapes[type]!)(value);
}

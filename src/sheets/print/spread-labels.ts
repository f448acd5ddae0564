/**
 * Where labels stand that wish for a place each, top to bottom, so that none lies on another: the
 * middle of each. They keep their order and stay between 0 and `room` where there is room for all.
 */
export function spreadLabels(
  wishes: readonly { readonly middle: number; readonly height: number }[],
  room: number,
): number[] {
  const places: number[] = [];
  let free = 0;
  for (const { middle, height } of wishes) {
    const at = Math.max(middle, free + height / 2);
    places.push(at);
    free = at + height / 2;
  }
  let end = room;
  for (let i = wishes.length - 1; i >= 0; i--) {
    const { height } = wishes[i]!;
    places[i] = Math.min(places[i]!, end - height / 2);
    end = places[i]! - height / 2;
  }
  return places;
}

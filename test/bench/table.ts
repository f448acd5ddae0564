import type { Timing } from "./statistics.js";

/** A limit that a measure is held to. */
export interface Bar {
  readonly name: string;
  readonly found: number;
  readonly limit: number;
  readonly sense: "under" | "at most" | "at least";
  readonly unit: "ms" | "x" | "MB";
}

export function isMet({ found, limit, sense }: Bar): boolean {
  if (sense === "at least") return found >= limit;
  return sense === "under" ? found < limit : found <= limit;
}

/** Timings, one a line, in aligned columns. */
export function timingTable(timings: readonly Timing[]): string {
  return aligned([
    ["", "median", "p95", "min", "spread", "rounds"],
    ...timings.map(({ name, median, p95, min, spread, rounds }) => [
      name,
      ...[median, p95, min].map((ms) => `${shown(ms)} ms`),
      `${(100 * spread).toFixed(0)} %`,
      `${rounds}`,
    ]),
  ]);
}

export function barTable(bars: readonly Bar[]): string {
  return aligned(
    bars.map((bar) => [
      bar.name,
      `${shown(bar.found)} ${bar.unit}`,
      `${bar.sense} ${bar.limit} ${bar.unit}`,
      isMet(bar) ? "PASS" : "FAIL",
    ]),
  );
}

/** Rows in columns: the first to the left, the others to the right. */
export function aligned(rows: readonly (readonly string[])[]): string {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows
    .map((row) =>
      row
        .map((cell, column) =>
          column === 0 ? cell.padEnd(widths[0]!) : cell.padStart(widths[column]! + 2),
        )
        .join("")
        .trimEnd(),
    )
    .join("\n");
}

function shown(value: number): string {
  return value < 10 ? value.toFixed(2) : value.toFixed(1);
}

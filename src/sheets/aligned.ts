/** Rows of a table as lines: the first column to the left, the others to the right. */
export function aligned(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => row[column]!.length)),
  );
  return rows.map((row) =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[0]!) : cell.padStart(widths[i]!)))
      .join("  "),
  );
}

import type { Diagnostic, SourceRange } from "../model/index.js";

/** A finding as JSON: lines and characters from zero, characters in UTF-16 units. */
export interface FindingJson {
  readonly code: string;
  readonly severity: string;
  readonly message: string;
  readonly file: string;
  readonly range: SourceRange;
  readonly wall?: string;
  readonly pieces?: readonly string[];
  readonly source?: string;
  readonly related?: readonly { file: string; range: SourceRange; message: string }[];
  readonly allowed?: string;
  readonly set?: string;
}

/** A finding as JSON; `shownPath` is how the host names a file to the reader. */
export function findingJson(found: Diagnostic, shownPath: (file: string) => string): FindingJson {
  const { code, severity, message, wall, pieces, source, related, allowed, set } = found;
  return {
    code,
    severity,
    message,
    file: shownPath(found.file),
    range: found.range,
    ...(wall !== undefined && { wall }),
    ...(pieces !== undefined && { pieces }),
    ...(source !== undefined && { source }),
    ...(related !== undefined && {
      related: related.map((place) => ({ ...place, file: shownPath(place.file) })),
    }),
    ...(allowed !== undefined && { allowed }),
    ...(set !== undefined && { set }),
  };
}

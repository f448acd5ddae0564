import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Log, Location, ReportingDescriptor, Result } from "sarif";
import type { Diagnostic, Severity, SourceRange } from "../model/index.js";
import { RULES } from "../rules/index.js";
import { isInside } from "./paths.js";
import { version } from "./version.js";

const SCHEMA =
  "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

const LEVEL: Readonly<Record<Severity, "error" | "warning" | "note">> = {
  error: "error",
  warning: "warning",
  information: "note",
};

/**
 * Findings as a SARIF 2.1.0 log (OASIS). Files under the working folder are named relative to it,
 * others in full; an allowed finding is there as suppressed, with its reason.
 */
export function sarifLog(
  diagnostics: readonly Diagnostic[],
  files: readonly string[],
  folder: string,
): Log {
  const rules = rulesFor(diagnostics);
  const indexOf = new Map(rules.map((rule, index) => [rule.id, index]));
  const uriOf = (file: string): string => uriFor(file, folder);
  return {
    $schema: SCHEMA,
    version: "2.1.0",
    runs: [
      {
        tool: { driver: { name: "Gaugelath", version, rules } },
        columnKind: "utf16CodeUnits",
        artifacts: files.map((file) => ({ location: { uri: uriOf(file) } })),
        results: diagnostics.map((found) => resultOf(found, indexOf.get(found.code)!, uriOf)),
      },
    ],
  };
}

/** The rules of the trade, and the codes of the language that were met. */
function rulesFor(diagnostics: readonly Diagnostic[]): ReportingDescriptor[] {
  const rules: ReportingDescriptor[] = RULES.map(({ code, severity, title, source }) => ({
    id: code,
    shortDescription: { text: title },
    help: { text: `Source: ${source}` },
    defaultConfiguration: { level: LEVEL[severity] },
  }));
  const known = new Set(rules.map((rule) => rule.id));
  const others = new Set(diagnostics.map((found) => found.code).filter((code) => !known.has(code)));
  return [...rules, ...[...others].sort().map((id) => ({ id }))];
}

function resultOf(found: Diagnostic, ruleIndex: number, uriOf: (file: string) => string): Result {
  const { code, severity, message, file, range, wall, pieces, source, related, allowed } = found;
  return {
    ruleId: code,
    ruleIndex,
    level: LEVEL[severity],
    message: { text: message },
    locations: [
      {
        ...locationOf(uriOf(file), range),
        ...(wall !== undefined && { logicalLocations: [{ name: wall, kind: "wall" }] }),
      },
    ],
    ...(related && {
      relatedLocations: related.map((place, id) => ({
        id,
        ...locationOf(uriOf(place.file), place.range),
        message: { text: place.message },
      })),
    }),
    suppressions: allowed === undefined ? [] : [{ kind: "inSource", justification: allowed }],
    ...((pieces ?? source) !== undefined && {
      properties: { ...(pieces && { pieces }), ...(source !== undefined && { source }) },
    }),
  };
}

/** SARIF counts lines and columns from one; its end column too is just past the last character. */
function locationOf(uri: string, { start, end }: SourceRange): Location {
  return {
    physicalLocation: {
      artifactLocation: { uri },
      region: {
        startLine: start.line + 1,
        startColumn: start.character + 1,
        endLine: end.line + 1,
        endColumn: end.character + 1,
      },
    },
  };
}

function uriFor(file: string, folder: string): string {
  if (!isInside(file, folder)) return pathToFileURL(file).href;
  return path.relative(folder, file).split(path.sep).map(encodeURIComponent).join("/");
}

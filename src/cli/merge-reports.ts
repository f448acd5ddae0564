import type { Log, ReportingDescriptor, Result } from "sarif";
import type { FindingJson } from "../sheets/index.js";
import { Failure } from "./failure.js";
import { inReadingOrder } from "./findings.js";

/** A report by the name of its file. */
export interface NamedReport {
  readonly name: string;
  readonly report: unknown;
}

interface CheckLog {
  readonly schema: number;
  readonly files: readonly string[];
  readonly diagnostics: readonly FindingJson[];
}

interface CompareLog {
  readonly schema: number;
  readonly plans: readonly unknown[];
}

/**
 * The reports of all shards, in their order, as the report of the whole: findings of a shared file
 * once. Throws a Failure where they are of different kinds.
 */
export function mergeReports(reports: readonly NamedReport[]): string {
  const kinds = reports.map(kindOf);
  const odd = kinds.findIndex((kind) => kind !== kinds[0]);
  if (odd > 0) {
    throw new Failure(
      `${reports[odd]!.name} is ${kinds[odd]!}, and ${reports[0]!.name} is ${kinds[0]!}`,
      "reports of one kind merge",
    );
  }
  const all = reports.map(({ report }) => report);
  switch (kinds[0]!) {
    case "a report of check":
      return `${JSON.stringify(mergeChecks(all as CheckLog[]), null, 2)}\n`;
    case "a report of compare":
      return mergeCompares(all as CompareLog[]);
    case "a SARIF log":
      return `${JSON.stringify(mergeSarif(all as Log[]), null, 2)}\n`;
  }
}

type Kind = "a report of check" | "a report of compare" | "a SARIF log";

function kindOf({ name, report }: NamedReport): Kind {
  if (typeof report === "object" && report !== null) {
    if ("runs" in report && Array.isArray(report.runs)) return "a SARIF log";
    if ("schema" in report && report.schema === 1) {
      if ("plans" in report && Array.isArray(report.plans)) return "a report of compare";
      if ("diagnostics" in report && "files" in report) return "a report of check";
    }
  }
  throw new Failure(`${name} is no report of this program`, "check and compare write them");
}

function mergeChecks(logs: readonly CheckLog[]): CheckLog {
  const files = logs.flatMap((log) => log.files);
  const diagnostics = logs.flatMap((log) => log.diagnostics);
  return { schema: 1, files, diagnostics: inReadingOrder(diagnostics, files) };
}

/** One plan a line, as compare itself writes them. */
function mergeCompares(logs: readonly CompareLog[]): string {
  const plans = logs.flatMap((log) => log.plans).map((plan) => `\n${JSON.stringify(plan)}`);
  return `{"schema":1,"plans":[${plans.join(",")}]}\n`;
}

function mergeSarif(logs: readonly Log[]): Log {
  const runs = logs.flatMap((log) => log.runs);
  const [first] = runs;
  if (!first) return logs[0]!;
  const artifacts = runs.flatMap((run) => run.artifacts ?? []);
  const rules = mergeRules(runs.flatMap((run) => run.tool.driver.rules ?? []));
  const indexOf = new Map(rules.map((rule, index) => [rule.id, index]));
  const results = inOrder(
    runs.flatMap((run) => run.results ?? []),
    artifacts.map((artifact) => artifact.location?.uri ?? ""),
  ).map((result) => ({ ...result, ruleIndex: indexOf.get(result.ruleId ?? "") ?? -1 }));
  const tool = { driver: { ...first.tool.driver, rules } };
  return { ...logs[0]!, runs: [{ ...first, tool, artifacts, results }] };
}

/** Each once; those that only some logs have, behind the others by name. */
function mergeRules(rules: readonly ReportingDescriptor[]): ReportingDescriptor[] {
  const once = [...new Map(rules.map((rule) => [rule.id, rule])).values()];
  const trade = once.filter((rule) => rule.shortDescription);
  const others = once.filter((rule) => !rule.shortDescription);
  return [...trade, ...others.sort((a, b) => (a.id < b.id ? -1 : 1))];
}

/** Results in the order of files, then of places; each once. */
function inOrder(results: readonly Result[], files: readonly string[]): readonly Result[] {
  const placeOf = (result: Result) => result.locations?.[0]?.physicalLocation;
  const uriOf = (result: Result) => placeOf(result)?.artifactLocation?.uri ?? "";
  const order = [...new Set([...files, ...results.map(uriOf)])];
  const rank = new Map(order.map((uri, index) => [uri, index]));
  const key = ({ ruleId, message, locations }: Result) =>
    JSON.stringify([ruleId, message, locations?.[0]?.physicalLocation]);
  const once = new Map(results.map((result) => [key(result), result]));
  return [...once.values()].sort((a, b) => {
    const [from, to] = [placeOf(a)?.region, placeOf(b)?.region];
    return (
      rank.get(uriOf(a))! - rank.get(uriOf(b))! ||
      (from?.startLine ?? 0) - (to?.startLine ?? 0) ||
      (from?.startColumn ?? 0) - (to?.startColumn ?? 0)
    );
  });
}

import { readFileSync } from "node:fs";
import path from "node:path";
import { Failure, systemReason } from "./failure.js";
import type { Host } from "./host.js";
import { mergeReports } from "./merge-reports.js";
import type { MergeRequest } from "./request.js";
import { EXIT } from "./tally.js";
import { writeWhole } from "./write-whole.js";

/** `gaugelath merge`: the reports of all shards as one. */
export async function merge({ files, output }: MergeRequest, host: Host): Promise<number> {
  const reports = files.map((file) => readReport(file, path.resolve(host.folder, file)));
  const text = [mergeReports(reports)];
  if (output === null || output === "-") await host.out(text);
  else writeWhole(path.resolve(host.folder, output), output, text);
  return EXIT.clean;
}

function readReport(shown: string, file: string): { name: string; report: unknown } {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (error) {
    throw new Failure(`${shown}: ${systemReason(error)}`);
  }
  try {
    return { name: shown, report: JSON.parse(text) as unknown };
  } catch {
    throw new Failure(`${shown} is no JSON`, "check and compare write reports with --format json");
  }
}

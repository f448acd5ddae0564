import { mkdirSync } from "node:fs";
import path from "node:path";
import { type ComparedPair, markdownReport, type PicturePlaces } from "./compare-report.js";
import { Failure, systemReason } from "./failure.js";
import type { Host } from "./host.js";
import { writeWhole } from "./write-whole.js";

const REPORT = "compare.md";

/**
 * Writes the pictures of the plans that changed into a folder, and the report that shows them where
 * one is wanted. One plan's overlay may go to standard output instead. Throws a Failure.
 */
export async function writePictures(
  compared: readonly ComparedPair[],
  same: number,
  output: string | null,
  host: Host,
  report: boolean,
): Promise<void> {
  const drawn = compared.filter(({ answer }) => answer.pictures !== null);
  if (output === null || output === "-") {
    if (drawn.length === 1) return host.out([drawn[0]!.answer.pictures!.overlay]);
    const found = drawn.length === 0 ? "no plan changed" : `${drawn.length} plans changed`;
    throw new Failure(`${found}: there is not one picture to write`, "-o FOLDER takes any number");
  }
  const folder = path.resolve(host.folder, output);
  for (const each of drawn) {
    const { overlay, sides } = each.answer.pictures!;
    const files = filesOf(each);
    writeInto(folder, files.overlay, output, [overlay]);
    sides.forEach(({ svg }, i) => writeInto(folder, files.sides[i]!, output, [svg]));
  }
  if (!report) return;
  writeInto(folder, REPORT, output, markdownReport(compared, same, linksOf));
}

function writeInto(folder: string, file: string, shown: string, text: Iterable<string>): void {
  const absolute = path.join(folder, file);
  try {
    mkdirSync(path.dirname(absolute), { recursive: true });
  } catch (error) {
    throw new Failure(`${shown} can't be a folder: ${systemReason(error)}`);
  }
  writeWhole(absolute, path.join(shown, file), text);
}

/** A plan's pictures by its own path; one that stands outside of the folder stays inside of it here. */
export function filesOf({ pair, answer }: ComparedPair): PicturePlaces {
  const inside = pair.name
    .replace(/\.tileplan$/, "")
    .split("/")
    .filter((part) => part !== "" && part !== "." && part !== "..")
    .map((part) => part.replace(/[<>:"|?*\\\p{Cc}]/gu, "_"))
    .join("/");
  const sides = (answer.pictures?.sides ?? []).map(
    ({ wall }) => `${inside}.${wall}.before-after.svg`,
  );
  return { overlay: `${inside}.overlay.svg`, sides };
}

function linksOf(compared: ComparedPair): PicturePlaces {
  const { overlay, sides } = filesOf(compared);
  const link = (file: string) =>
    file
      .split("/")
      .map(encodeURIComponent)
      .join("/")
      .replace(/[()]/g, (mark) => (mark === "(" ? "%28" : "%29"));
  return { overlay: link(overlay), sides: sides.map(link) };
}

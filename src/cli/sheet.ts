import { type Page, type Paper, paperOf, SHEET_SCHEMA, usualPaper } from "../sheets/index.js";
import { type SheetPart, SheetPress, type SheetWork } from "../sheets/print.js";
import { takeoff } from "../takeoff/index.js";
import { Failure } from "./failure.js";
import type { Host } from "./host.js";
import { type OnePlan, outputPath, runOnePlan, sayFindings } from "./one-plan.js";
import { shownPath } from "./paths.js";
import { readFonts } from "./print-fonts.js";
import { Progress } from "./progress.js";
import { startRasteriser } from "./rasterise.js";
import type { SheetFormat, SheetRequest } from "./request.js";
import { writeSheetFolder } from "./sheet-folder.js";
import { partName, placeOf } from "./sheet-places.js";
import { revisionOf } from "./sheet-revision.js";
import { EXIT } from "./tally.js";
import { writeWhole } from "./write-whole.js";

const LISTS = ["cuts", "purchases"] as const;

/** `gaugelath sheet`: the setter's sheet and the shopping list, on paper. Findings go to standard error. */
export async function sheet(request: SheetRequest, host: Host): Promise<number> {
  const place = placeOf(request.output, request.format, host.folder);
  const one = await runOnePlan(request, host);
  const exit = sayFindings(one, request.strict, host);
  const progress = new SheetProgress(host);
  const press = new SheetPress(workOf(request, one, host, progress));
  if (place.kind === "folder") await writeSheetFolder(press, request.output, host);
  else await writeFormat(press, place.format, request, one, host);
  progress.end();
  sayMissing(press.missing, host);
  return exit;
}

/** `gaugelath sheet --schema`: the JSON Schema of a sheet's JSON. */
export async function sheetSchema(host: Host): Promise<number> {
  await host.out([JSON.stringify(SHEET_SCHEMA, null, 2), "\n"]);
  return EXIT.clean;
}

function workOf(
  request: SheetRequest,
  { file, plans, outcome, diagnostics }: OnePlan,
  host: Host,
  progress: SheetProgress,
): SheetWork {
  const { solved } = outcome;
  const taken = takeoff(solved);
  const given = request.revision;
  const revision = given ?? (request.file === "-" ? null : revisionOf(file, plans.used));
  const paper = paperOf(solved, diagnostics, taken, { revision });
  const { pages, lists } = wanted(paper, request.only);
  const fonts = readFonts(host.assets);
  const shown = (each: string): string => shownPath(each, host.folder);
  return {
    facts: { solved, diagnostics, takeoff: taken, revision, shownPath: shown },
    paper: { ...paper, pages },
    size: request.paper ?? usualPaper(solved.plan.units),
    lists,
    fonts,
    startRasteriser: () => startRasteriser(host.assets, fonts),
    progress: (done, all) => progress.tell(done, all),
  };
}

/** The pages and lists that `--only` names: by a page's id, a wall's name, or a list's. */
function wanted(
  paper: Paper,
  only: readonly string[],
): { readonly pages: readonly Page[]; readonly lists: SheetWork["lists"] } {
  if (only.length === 0) return { pages: paper.pages, lists: LISTS };
  for (const name of only) {
    const known = paper.pages.some((page) => isNamed(page, name)) || isList(name);
    if (known) continue;
    const names = [...paper.pages.map(({ id }) => id), ...LISTS].join(", ");
    throw new Failure(`--only ${name}: the sheet has no such part`, `its parts are ${names}`);
  }
  const pages = paper.pages.filter((page) => only.some((name) => isNamed(page, name)));
  return { pages, lists: LISTS.filter((list) => only.includes(list)) };
}

function isNamed({ id, wall }: Page, name: string): boolean {
  return id === name || wall === name;
}

function isList(name: string): boolean {
  return LISTS.some((list) => list === name);
}

async function writeFormat(
  press: SheetPress,
  format: SheetFormat,
  { output }: SheetRequest,
  one: OnePlan,
  host: Host,
): Promise<void> {
  const parts = await press.partsOf(format);
  if (output === "-") return writeOut(parts, host);
  if (parts.length === 0) throw nothingWanted(format);
  const alone = parts.length === 1;
  const written = parts.map(({ part, content }) => {
    const name = partName(output, part, alone);
    writeWhole(outputPath(name, one, host), name, content);
    return name;
  });
  if (!alone) await host.out(written.map((name) => `${name}\n`));
}

/** Several files can't follow each other on one stream. */
async function writeOut(parts: readonly SheetPart[], host: Host): Promise<void> {
  const [first, ...others] = parts;
  if (first && others.length === 0) return host.out(first.content);
  const names = parts.map(({ part }) => part).join(", ");
  throw new Failure(
    `-o - takes one file; the sheet makes ${parts.length}`,
    `--only takes one of ${names}`,
  );
}

function nothingWanted(format: SheetFormat): Failure {
  const hint = "it may be that --only leaves nothing of this format";
  return new Failure(`there is nothing to write as ${format}`, hint);
}

function sayMissing(letters: readonly string[], host: Host): void {
  if (letters.length === 0) return;
  const named = letters.map((letter) => {
    const code = letter.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0");
    return `U+${code}`;
  });
  host.err(
    `gaugelath: the print font has no letter for ${named.join(", ")}; a sign stands there\n`,
  );
}

/** How many sheets are printed; it isn't known how many there are until they are laid out. */
class SheetProgress {
  #progress: Progress | null = null;

  constructor(private readonly host: Host) {}

  tell(done: number, all: number): void {
    this.#progress ??= new Progress(all, "printing sheets", this.host);
    this.#progress.tell(done);
  }

  end(): void {
    this.#progress?.end();
  }
}

import path from "node:path";
import type { SheetPart, SheetPress } from "../sheets/print.js";
import type { Host } from "./host.js";
import type { SheetFormat } from "./request.js";
import { makeFolder, SHEET_FORMATS } from "./sheet-places.js";
import { writeWhole } from "./write-whole.js";

/** Where each part of a format stands in the folder. */
const PLACES: Readonly<Record<SheetFormat, (part: string) => string>> = {
  pdf: () => "sheet.pdf",
  md: () => "sheet.md",
  json: () => "sheet.json",
  csv: (list) => `${list}.csv`,
  dxf: (page) => `drawings/${page.replace(/^wall-/, "")}.dxf`,
  svg: (sheet) => `pages/${sheet}.svg`,
  png: (sheet) => `pages/${sheet}.png`,
};

/** The picture that the Markdown shows of a page. */
function pictureOf(page: string): string {
  return `pictures/${page}.svg`;
}

/**
 * Writes a sheet in every format into a folder, and tells the files' names. The poles are in the PDF
 * alone, which prints them in true size. Everything is made before anything is written. Throws a Failure.
 */
export async function writeSheetFolder(
  press: SheetPress,
  output: string,
  host: Host,
): Promise<void> {
  const files = await filesOf(press);
  const folder = path.resolve(host.folder, output);
  for (const within of new Set(files.map(({ name }) => path.dirname(name)))) {
    makeFolder(path.join(folder, within), path.join(output, within));
  }
  for (const { name, content } of files) {
    writeWhole(path.join(folder, name), path.join(output, name), content);
  }
  await host.out(files.map(({ name }) => `${path.join(output, name)}\n`));
}

interface NamedFile {
  readonly name: string;
  readonly content: SheetPart["content"];
}

async function filesOf(press: SheetPress): Promise<readonly NamedFile[]> {
  const files: NamedFile[] = [];
  for (const format of SHEET_FORMATS) {
    const parts = await press.partsOf(format, {
      pictureFile: ({ id }) => pictureOf(id),
      poles: format === "pdf",
    });
    for (const { part, content } of parts) {
      const whole = format === "md" || format === "json" ? [...content] : content;
      files.push({ name: PLACES[format](part), content: whole });
    }
  }
  const pictures = press.pictures();
  return [...files, ...pictures.map(({ part, content }) => ({ name: pictureOf(part), content }))];
}

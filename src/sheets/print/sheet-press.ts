import { drawHeadless } from "../../drawing/headless.js";
import { buildWallScene } from "../../drawing/index.js";
import { cutsCsv } from "../csv/cuts-csv.js";
import { purchasesCsv } from "../csv/purchases-csv.js";
import { paperMarkdown } from "../paper/markdown.js";
import { pageIds } from "../paper/page-ids.js";
import type { Page, Paper } from "../paper/paper.js";
import { type SheetFacts, sheetJson } from "../sheet-json/sheet-json.js";
import { surfacesOf } from "../../solver/index.js";
import { dxfOf } from "./dxf.js";
import { Faces, type FontFiles } from "./faces.js";
import { type LaidPaper, layOut } from "./lay-out.js";
import type { PaperSize } from "./paper-size.js";
import { pdfOf } from "./pdf.js";
import type { Sheet } from "./sheet.js";
import { svgOf } from "./svg.js";

/** The formats that sheets are made in. */
export type SheetFormat = "pdf" | "md" | "json" | "csv" | "svg" | "png" | "dxf";

/** Draws the SVG of a sheet as PNG; its width is told in points. */
export type Rasterise = (svg: string, width: number) => Uint8Array;

/** What a sheet is made of, and what of it is wanted. */
export interface SheetWork {
  readonly facts: SheetFacts;
  readonly paper: Paper;
  readonly size: PaperSize;
  /** Whether cuts, and purchases, are wanted of the lists. */
  readonly lists: readonly ("cuts" | "purchases")[];
  readonly fonts: FontFiles;
  /** Made ready when it is first needed. */
  readonly startRasteriser: () => Promise<Rasterise>;
  /** Hears of each sheet that is printed. */
  readonly progress: (done: number, all: number) => void;
}

/** A file of a format: its part's name (empty where the format has one file), and what is in it. */
export interface SheetPart {
  readonly part: string;
  readonly content: Iterable<string | Uint8Array>;
}

/** How the parts of a format are wanted. */
export interface PartWishes {
  /** Where a Markdown page finds its picture; null, as where nothing is said, leaves pictures out. */
  readonly pictureFile?: (page: Page) => string | null;
  /** Whether SVG and PNG show the sheets of story poles; they do where nothing is said. */
  readonly poles?: boolean;
}

/** Makes sheets in any format; what several formats need is made once. */
export class SheetPress {
  #faces: Faces | null = null;
  #laid: LaidPaper | null = null;

  constructor(private readonly work: SheetWork) {}

  /** The letters that the print font doesn't have, as far as sheets were laid out. */
  get missing(): readonly string[] {
    return this.#laid?.missing ?? [];
  }

  async partsOf(
    format: SheetFormat,
    { pictureFile = () => null, poles = true }: PartWishes = {},
  ): Promise<readonly SheetPart[]> {
    const { paper, facts, lists } = this.work;
    switch (format) {
      case "pdf":
        return [{ part: "", content: [await this.#pdf()] }];
      case "svg":
        return this.#svgs(poles);
      case "png":
        return this.#pngs(poles);
      case "dxf":
        return this.#drawings();
      case "md":
        return [{ part: "", content: paperMarkdown(paper, pictureFile) }];
      case "json":
        return [{ part: "", content: sheetJson(facts) }];
      case "csv":
        return lists.map((list) => ({
          part: list,
          content: (list === "cuts" ? cutsCsv : purchasesCsv)(facts.solved, facts.takeoff),
        }));
    }
  }

  /** The pictures of the pages, as `gaugelath draw` draws them. */
  pictures(): readonly SheetPart[] {
    return this.work.paper.pages.flatMap(({ id, blocks }) =>
      blocks.flatMap((block) =>
        block.kind === "picture" ? [{ part: id, content: [drawHeadless(block.scene)] }] : [],
      ),
    );
  }

  async #pdf(): Promise<Uint8Array> {
    const laid = this.#lay();
    const all = laid.sheets.length;
    return pdfOf(laid, this.#openFaces(), (done) => this.work.progress(done, all));
  }

  #svgs(poles: boolean): readonly SheetPart[] {
    return this.#pictured(poles).map((sheet) => ({ part: nameOf(sheet), content: [svgOf(sheet)] }));
  }

  async #pngs(poles: boolean): Promise<readonly SheetPart[]> {
    const sheets = this.#pictured(poles);
    const rasterise = await this.work.startRasteriser();
    return sheets.map((sheet, i) => {
      const png = rasterise(svgOf(sheet), sheet.width);
      this.work.progress(i + 1, sheets.length);
      return { part: nameOf(sheet), content: [png] };
    });
  }

  #pictured(poles: boolean): readonly Sheet[] {
    const { sheets } = this.#lay();
    if (poles) return sheets;
    const hasPoles = ({ blocks }: Page): boolean => blocks.some(({ kind }) => kind === "pole");
    const left = new Set(this.work.paper.pages.filter(hasPoles).map(({ id }) => id));
    return sheets.filter(({ page }) => !left.has(page));
  }

  /** A drawing for each wall that has a page, and for each surface inside its openings. */
  #drawings(): readonly SheetPart[] {
    const { facts, paper } = this.work;
    const { solved, takeoff } = facts;
    const drawings = solved.walls.flatMap((wall) => {
      const { name } = wall.wall;
      const page = paper.pages.find((each) => each.wall === name);
      if (!page) return [];
      return surfacesOf([wall]).map((surface) => {
        const own = surface.wall.name;
        const scene = buildWallScene(solved, surface, []).walls[0]!;
        const cuts = takeoff.walls.find((each) => each.wall === own) ?? null;
        // The name of a surface inside an opening is the wall's, the opening's and its own, with dots.
        const part = `${page.id}${own.slice(name.length)}`;
        return { part, content: [dxfOf(solved.plan, surface, scene, cuts)] };
      });
    });
    const ids = pageIds(drawings.map(({ part }) => part));
    return drawings.map(({ content }, i) => ({ part: ids[i]!, content }));
  }

  #lay(): LaidPaper {
    const { paper, size } = this.work;
    return (this.#laid ??= layOut(paper, size, this.#openFaces()));
  }

  #openFaces(): Faces {
    return (this.#faces ??= new Faces(this.work.fonts));
  }
}

/** The page's id, and from its second sheet on the sheet's number. */
function nameOf({ page, part }: Sheet): string {
  return part === 1 ? page : `${page}-${part}`;
}

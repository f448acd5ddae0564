import type { Connection } from "vscode-languageserver";
import type { FontFiles, SheetPart } from "../sheets/print.js";
import type { PlanDesk } from "./plan-desk.js";
import * as protocol from "./protocol.js";

/** What prints: the largest part of the product, loaded when a person first saves a sheet. */
export interface Press {
  readonly print: typeof import("../sheets/print.js");
  readonly fonts: FontFiles;
}

/** Answers what clients ask of a plan's sheet. `loadPress` is called once. */
export function answerSheets(
  connection: Connection,
  desk: PlanDesk,
  loadPress: () => Promise<Press>,
): void {
  let press: Promise<Press> | null = null;

  connection.onRequest(
    protocol.SHEET,
    async ({ uri }: protocol.SheetRequest): Promise<protocol.SheetAnswer | null> => {
      const document = await desk.ready(uri);
      if (!document) return null;
      const { version, paper, size } = desk.service.sheet(document);
      return { version, paper, size };
    },
  );

  connection.onRequest(
    protocol.PRINT_SHEET,
    async ({ uri, format }: protocol.PrintSheet): Promise<protocol.PrintedFile[] | null> => {
      press ??= loadPress();
      const { print, fonts } = await press;
      const document = await desk.ready(uri);
      if (!document) return null;
      const { facts, paper, size } = desk.service.sheet(document);
      const made = new print.SheetPress({
        ...{ facts, paper, size, fonts, lists: ["cuts", "purchases"] },
        startRasteriser: () => Promise.reject(new Error("A server draws no pixels")),
        progress: () => undefined,
      });
      return (await made.partsOf(format)).map(fileOf);
    },
  );
}

function fileOf({ part, content }: SheetPart): protocol.PrintedFile {
  const encoder = new TextEncoder();
  const chunks = Array.from(content, (each) =>
    typeof each === "string" ? encoder.encode(each) : each,
  );
  return { part, data: base64(chunks) };
}

/** The protocol's messages are texts. */
function base64(chunks: readonly Uint8Array[]): string {
  let letters = "";
  for (const chunk of chunks) {
    for (let at = 0; at < chunk.length; at += 0x8000) {
      letters += String.fromCharCode(...chunk.subarray(at, at + 0x8000));
    }
  }
  return btoa(letters);
}

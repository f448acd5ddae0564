import assert from "node:assert/strict";
import PDFDocument from "pdfkit";
import type { PaperElement } from "../../../src/drawing/headless.js";
import { drawPdfPicture } from "../../../src/sheets/print/pdf-picture.js";
import { FACES } from "./kit.js";

/** The drawing operators (ISO 32000, annex A) that a picture comes to. */
async function operators(...children: readonly PaperElement[]): Promise<string> {
  const pdf = new PDFDocument({ compress: false, font: "", margin: 0 });
  pdf.registerFont("regular", FACES.fontFor("regular") as unknown as string);
  pdf.registerFont("bold", FACES.fontFor("bold") as unknown as string);
  const parts: Buffer[] = [];
  const ended = new Promise((resolve) =>
    pdf.on("data", (part: Buffer) => parts.push(part)).on("end", resolve),
  );
  drawPdfPicture(pdf, { name: "svg", attributes: {}, text: null, children }, FACES);
  pdf.end();
  await ended;
  return /stream\n([\s\S]*?)\nendstream/.exec(Buffer.concat(parts).toString("latin1"))![1]!;
}

function element(
  name: string,
  attributes: Record<string, string>,
  children: readonly PaperElement[] = [],
  text: string | null = null,
): PaperElement {
  return { name, attributes, children, text };
}

describe("a picture in a PDF", () => {
  it("fills and rules a path with what stands over it in its groups", async () => {
    const path = element("path", { d: "M0 0H10V10z" });
    const drawn = await operators(
      element("g", { fill: "#ffffff", stroke: "#000000", "stroke-width": "2" }, [path]),
    );
    assert.match(drawn, /2 w/);
    assert.match(drawn, /0 0 m\n10 0 l\n10 10 l\nh\n(.*\n)*?B/);
  });

  it("fills by the even-odd rule where it is asked to", async () => {
    const path = element("path", { d: "M0 0H10V10z", "fill-rule": "evenodd" });
    assert.match(await operators(path), /f\*/);
  });

  it("dashes a line, and not the next one", async () => {
    const dashed = element("path", {
      d: "M0 0H9",
      fill: "none",
      stroke: "#000000",
      "stroke-dasharray": "3 1",
    });
    const plain = element("path", { d: "M0 5H9", fill: "none", stroke: "#000000" });
    assert.match(await operators(dashed, plain), /\[3 1\] 0 d[\s\S]*\[\] 0 d/);
  });

  it("moves and turns what is moved and turned", async () => {
    const text = element(
      "text",
      { transform: "translate(5 6) rotate(-90)", "font-size": "4" },
      [],
      "up",
    );
    const drawn = await operators(text);
    assert.match(drawn, /1 0 0 1 5 6 cm\n0 -1 1 0 0 0 cm/);
  });

  it("sets a text by its anchor", async () => {
    const at = async (anchor: string): Promise<number> => {
      const label = element(
        "text",
        { x: "100", y: "20", "font-size": "10", "text-anchor": anchor },
        [],
        "tile",
      );
      return Number(/1 0 0 1 ([\d.]+) [\d.-]+ Tm/.exec(await operators(label))![1]);
    };
    const width = FACES.widthOf("tile", 10);
    assert.equal(await at("start"), 100);
    assert.ok(Math.abs((await at("middle")) - (100 - width / 2)) < 1e-3);
    assert.ok(Math.abs((await at("end")) - (100 - width)) < 1e-3);
  });

  it("lays a halo under a text as a box", async () => {
    const label = element(
      "text",
      { x: "0", y: "20", "font-size": "10", stroke: "#ffffff" },
      [],
      "tile",
    );
    const drawn = await operators(label);
    assert.match(drawn, / re\n[\s\S]*f\n[\s\S]*Tj|TJ/);
    assert.equal(drawn.match(/BT/g)!.length, 1);
  });

  it("refuses what it does not know, so that nothing is left out unseen", async () => {
    await assert.rejects(operators(element("image", {})), /A picture holds <image>/);
    await assert.rejects(operators(element("g", { transform: "skewX(3)" })), /moved by skewX/);
  });
});

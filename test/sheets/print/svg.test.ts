import assert from "node:assert/strict";
import { Resvg } from "@resvg/resvg-js";
import { layOut } from "../../../src/sheets/print/lay-out.js";
import { svgOf } from "../../../src/sheets/print/svg.js";
import { exampleScene, FACES, paperWith, tableOf, textsOf, wordsOf } from "./kit.js";

describe("a sheet as SVG", () => {
  const scene = exampleScene("back-wall.tileplan");
  const { sheets } = layOut(
    paperWith({ kind: "caution", lines: [`Tom & <Jerry> "7"`] }, tableOf(3), {
      kind: "picture",
      scene,
      caption: "Back wall",
    }),
    "letter",
    FACES,
  );

  it("is in true size", () => {
    assert.match(
      svgOf(sheets[0]!),
      /^<svg [^>]*width="612pt" height="792pt" viewBox="0 0 612 792"/,
    );
  });

  it("has every word, its signs escaped", () => {
    const svg = sheets.map(svgOf).join("");
    for (const word of sheets.flatMap(wordsOf)) {
      const escaped = word.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
      assert.ok(svg.includes(`>${escaped.replace(/"/g, "&quot;")}</text>`), word);
    }
  });

  it("holds each text to its width, whatever font is found", () => {
    for (const sheet of sheets) {
      const held = [...svgOf(sheet).matchAll(/textLength="([\d.]+)"/g)].map(([, width]) =>
        Number(width),
      );
      const wanted = textsOf(sheet).map(({ width }) => Math.round(width * 100) / 100);
      assert.deepEqual(held, wanted);
    }
  });

  it("is read by a program that draws", () => {
    for (const sheet of sheets) {
      const picture = new Resvg(svgOf(sheet)).render();
      assert.deepEqual(
        [picture.width, picture.height].map((each) => each > 600),
        [true, true],
      );
    }
  });

  it("has no colour", () => {
    for (const [, r, g, b] of sheets
      .map(svgOf)
      .join("")
      .matchAll(/#(\w\w)(\w\w)(\w\w)/g)) {
      assert.ok(r === g && g === b, `#${r!}${g!}${b!}`);
    }
  });
});

import assert from "node:assert/strict";
import { FILE, Plans, STOCK_FILE, withCursor } from "./plans.js";

function definitionAt(marked: string): string | null {
  const { text, at } = withCursor(marked);
  const plans = new Plans();
  const place = plans.service.definition(plans.open(text), at);
  return place && `${place.file}:${place.range.start.line}:${place.range.start.character}`;
}

describe("go to definition", () => {
  it("finds tiles, trims, walls, openings and lets in the text", () => {
    assert.equal(definitionAt("let a = 1\nbed |a\n"), `${FILE}:0:4`);
    assert.equal(definitionAt("tile t {\n}\nwall a {\n  lay t| {\n  }\n}\n"), `${FILE}:0:5`);
    assert.equal(definitionAt("wall a {\n  left corner |b under\n}\nwall b {\n}\n"), `${FILE}:3:5`);
    const sash = "  window s {\n  }\n";
    const walls = `wall a {\n${sash}  lay t {\n    up full course under |s\n  }\n}\nwall b {\n${sash}}\n`;
    assert.equal(definitionAt(walls), `${FILE}:1:9`);
  });

  it("finds what a used file brings, and the file itself", () => {
    const use = 'use "stock.tileplan"\n';
    assert.equal(definitionAt(`${use}wall a {\n  lay |pressed {\n  }\n}\n`), `${STOCK_FILE}:3:5`);
    assert.equal(definitionAt('use "stock.|tileplan"\n'), `${STOCK_FILE}:0:0`);
  });

  it("takes a name of the text itself before one of a used file", () => {
    const text = 'use "stock.tileplan"\ntile pressed {\n}\nwall a {\n  lay |pressed {\n  }\n}\n';
    assert.equal(definitionAt(text), `${FILE}:1:5`);
  });

  it("finds nothing for an unknown name, a missing file, or the wall's own middle", () => {
    assert.equal(definitionAt("bed |nothing\n"), null);
    assert.equal(definitionAt('use "gone|.tileplan"\n'), null);
    assert.equal(
      definitionAt("wall wall {\n  lay t {\n    across tile centred on |wall\n  }\n}\n"),
      null,
    );
  });
});

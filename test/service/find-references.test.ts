import assert from "node:assert/strict";
import type { Turns } from "../../src/service/index.js";
import { FILE, Plans, STOCK_FILE, TURNS, withCursor } from "./plans.js";

const OTHER = "/plans/other.tileplan";

async function referencesAt(
  marked: string,
  texts: Readonly<Record<string, string>> = {},
  withDeclaration = true,
  turns: Turns = TURNS,
): Promise<string[] | null> {
  const { text, at } = withCursor(marked);
  const plans = new Plans(texts);
  const places = await plans.service.references(plans.open(text), at, withDeclaration, turns);
  return (
    places?.map(({ file, range }) => `${file}:${range.start.line}:${range.start.character}`) ?? null
  );
}

const LAY = "wall a {\n  lay pressed {\n  }\n}\n";

describe("references", () => {
  it("are every use of a let, its declaration too where it is wanted", async () => {
    const text = "let |a = 1\nlet b = a + a\n";
    assert.deepEqual(await referencesAt(text), [`${FILE}:0:4`, `${FILE}:1:8`, `${FILE}:1:12`]);
    assert.deepEqual(await referencesAt(text, {}, false), [`${FILE}:1:8`, `${FILE}:1:12`]);
  });

  it("are found in every file that uses the one that declares it", async () => {
    const places = await referencesAt(
      `use "stock.tileplan"\n${LAY.replace("pressed", "|pressed")}`,
      {
        [OTHER]: `use "stock.tileplan"\n${LAY}`,
        "/plans/own.tileplan": `tile pressed {\n}\n${LAY}`,
      },
    );
    assert.deepEqual(places, [`${FILE}:2:6`, `${STOCK_FILE}:3:5`, `${OTHER}:2:6`]);
  });

  it("are those of an opening in its own wall alone", async () => {
    const wall = (name: string, opening: string): string =>
      `wall ${name} {\n  window ${opening} {\n  }\n  lay t {\n    up full course over s\n  }\n}\n`;
    assert.deepEqual(await referencesAt(wall("a", "|s") + wall("b", "s")), [
      `${FILE}:1:9`,
      `${FILE}:4:24`,
    ]);
  });

  it("are none where no name stands, and where the walk was called off", async () => {
    assert.equal(await referencesAt("bed |1\n"), null);
    const off = { cancelled: true, pause: () => Promise.resolve() };
    assert.equal(await referencesAt("let |a = 1\n", {}, true, off), null);
  });
});

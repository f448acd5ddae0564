import assert from "node:assert/strict";
import { edited, FILE, Plans, STOCK_FILE, TURNS, withCursor } from "./plans.js";

const OTHER = "/plans/other.tileplan";
const LAY = "wall a {\n  lay pressed {\n  }\n}\n";

/** The texts after a rename, or why there is none. */
async function renamed(
  marked: string,
  newName: string,
  texts: Readonly<Record<string, string>> = {},
): Promise<Record<string, string> | string> {
  const { text, at } = withCursor(marked);
  const plans = new Plans(texts);
  const renaming = await plans.service.rename(plans.open(text), at, newName, TURNS);
  if (!renaming.ok) return renaming.message;
  return Object.fromEntries(
    renaming.edits.map(({ file, edits }) => [file, edited(plans.texts.get(file)!, edits)]),
  );
}

describe("rename", () => {
  it("changes a name wherever it is used", async () => {
    assert.deepEqual(await renamed("let |a = 1\nlet b = a + 2 * (a - 1)\n", "sill"), {
      [FILE]: "let sill = 1\nlet b = sill + 2 * (sill - 1)\n",
    });
  });

  it("changes a tile's name across the files that use it", async () => {
    const texts = { [OTHER]: `use "stock.tileplan"\n${LAY}` };
    const changed = await renamed(
      `use "stock.tileplan"\n${LAY.replace("pressed", "pre|ssed")}`,
      "white",
      texts,
    );
    assert.ok(typeof changed !== "string");
    assert.deepEqual(Object.keys(changed).sort(), [FILE, OTHER, STOCK_FILE].sort());
    assert.ok(changed[STOCK_FILE]!.includes("tile white "));
    assert.ok(changed[OTHER]!.includes("lay white {"));
  });

  it("changes a wall with the corners that name it, an opening, a trim and a hole", async () => {
    const walls =
      "wall |a {\n}\nwall b {\n  left corner a under\n  right outside a mitre\n  lay t {\n    across mirrored from a\n  }\n}\n";
    assert.deepEqual(await renamed(walls, "back"), {
      [FILE]:
        "wall back {\n}\nwall b {\n  left corner back under\n  right outside back mitre\n  lay t {\n    across mirrored from back\n  }\n}\n",
    });
    const opening = "wall a {\n  window |s {\n  }\n  lay t {\n    up full course over s\n  }\n}\n";
    assert.ok(JSON.stringify(await renamed(opening, "sash")).includes("over sash"));
    const lined =
      "tile t {\n}\nwall a {\n  niche |s {\n    back t across tile centred on s\n    sill t across tile centred on wall\n  }\n}\n";
    assert.ok(JSON.stringify(await renamed(lined, "shelf")).includes("centred on shelf"));
    const trim = "trim |n {\n}\nwall a {\n  left free trim n\n}\n";
    assert.ok(JSON.stringify(await renamed(trim, "nose")).includes("free trim nose"));
    assert.ok(
      JSON.stringify(await renamed("wall a {\n  hole |v at 1, 1 across 1\n}\n", "valve")).includes(
        "hole valve at",
      ),
    );
  });

  it("refuses what is no name, what is taken, here or in a used file, and what has no name", async () => {
    assert.match((await renamed("let |a = 1\n", "a b")) as string, /no name/);
    assert.match((await renamed("let |a = 1\n", "3a")) as string, /no name/);
    assert.match((await renamed("let |a = 1\nlet b = 2\n", "b")) as string, /taken by line 2/);
    const own = 'use "stock.tileplan"\ntile |mine {\n}\n';
    assert.match((await renamed(own, "pressed")) as string, /taken by line 4 of stock\.tileplan/);
    assert.match((await renamed("bed |1\n", "x")) as string, /Nothing with a name/);
    assert.match(
      (await renamed("wall a {\n  window |s {\n  }\n}\n", "wall")) as string,
      /wall itself/,
    );
  });

  it("says beforehand what would be renamed", () => {
    const plans = new Plans();
    const document = plans.open("let sill = 1\nbed nothing\n");
    const at = { line: 0, character: 6 };
    assert.deepEqual(plans.service.renamable(document, at), {
      name: "sill",
      range: { start: { line: 0, character: 4 }, end: { line: 0, character: 8 } },
    });
    assert.equal(plans.service.renamable(document, { line: 1, character: 6 }), null);
  });
});

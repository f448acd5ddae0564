import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { gaugelath } from "./capture.js";
import { CLEAN } from "./plans.js";
import { workplace } from "./workplace.js";

/** Two walls, one of them cut. */
const TWO = CLEAN.replace(
  "wall back",
  `wall side "Side wall" {
  size 11 x 8 5/16
  lay field {
    bond stack
    joint 1/16
  }
}
wall back`,
);

describe("a sheet's folder", () => {
  const place = workplace({ "two.tileplan": TWO, "file.txt": "" });
  const sheet = (...words: string[]) => gaugelath(place, ["sheet", "two.tileplan", ...words]);
  const inside = (folder: string): string[] => readdirSync(place.path(folder)).sort();

  it("has what is printed, read and ordered from at its top, and the rest by what it is", async () => {
    const { exit, out } = await sheet("-o", "all/");
    assert.equal(exit, 0);
    const top = ["cuts.csv", "purchases.csv", "sheet.json", "sheet.md", "sheet.pdf"];
    assert.deepEqual(inside("all"), [...top, "drawings", "pages", "pictures"].sort());
    assert.deepEqual(inside("all/drawings"), ["back.dxf", "side.dxf"]);
    assert.deepEqual(inside("all/pictures"), ["wall-back.svg", "wall-side.svg"]);
    const told = out.trim().split("\n").sort();
    const found = ["", "drawings", "pages", "pictures"].flatMap((folder) =>
      inside(`all/${folder}`)
        .filter((name) => name.includes("."))
        .map((name) => `all/${folder === "" ? "" : `${folder}/`}${name}`),
    );
    assert.deepEqual(told, found.sort());
  });

  it("has a picture of each sheet but the poles', which are of use in true size alone", () => {
    const pages = inside("all/pages");
    for (const name of ["plan", "wall-back", "wall-side", "shopping-list"]) {
      assert.ok(pages.includes(`${name}.svg`) && pages.includes(`${name}.png`), name);
    }
    assert.ok(!pages.some((name) => name.startsWith("poles")));
    const pdf = readFileSync(place.path("all/sheet.pdf"), "latin1");
    const printed = pdf.match(/\/Type \/Page\b/g)!.length;
    assert.ok(printed > pages.filter((name) => name.endsWith(".svg")).length);
  });

  it("has the pictures that its Markdown shows", () => {
    const links = readFileSync(place.path("all/sheet.md"), "utf8").matchAll(/\]\(([^)]+\.svg)\)/g);
    const shown = Array.from(links, ([, link]) => link!);
    assert.deepEqual(shown.sort(), ["pictures/wall-back.svg", "pictures/wall-side.svg"]);
  });

  it("has no more than is asked for", async () => {
    await sheet("-o", "lists/", "--only", "cuts");
    assert.ok(inside("lists").includes("cuts.csv") && !inside("lists").includes("purchases.csv"));
    assert.ok(!inside("lists").includes("drawings"));
  });

  it("is not made where a file stands in its way", async () => {
    const { exit, err } = await sheet("-o", "file.txt/");
    assert.equal(exit, 2);
    assert.match(err, /file\.txt.*can't be a folder/);
  });
});

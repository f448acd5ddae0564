import assert from "node:assert/strict";
import { bandText, LAYS } from "../../rules/band-text.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "band/height";
const field = (lines: string) => `lay field {
    bond stack
    joint 1/8
    across full tile from left
    ${lines}
  }`;
const LINER = `lay liner {
    bond stack
    joint 1/8
    across full tile from left
    over field
    courses 1
  }
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    over liner
  }`;

describe("a band at another height than the next wall's", () => {
  it("is moved with the start of the courses that it stands on", () => {
    const low = LAYS.replace("courses", "up joint at -1/2\n    courses");
    const { text, codes } = mend(
      bandText({ sideLays: low }),
      CODE,
      /liner 7\/16 in up, to that of back/,
    );
    // A course of 3 in and its joint over -1/16 in, where the other wall has the joint under course 1.
    assert.ok(text.includes("up joint at 3 1/16\n"), text);
    assert.ok(!codes.includes(CODE));
  });

  it("is moved with the line up to which the lay under it reaches", () => {
    const lays = (to: string) => `${field(`covers bottom to ${to}`)}\n  ${LINER}`;
    const text = bandText({ backLays: lays("24 7/8"), sideLays: lays("26 + 1/4") });
    const mended = mend(text, CODE, /liner 1 3\/8 in down/);
    assert.equal(mended.text.match(/covers bottom to 24 7\/8\n/g)!.length, 2, mended.text);
    assert.ok(!mended.codes.includes(CODE));
  });

  it("stays where its courses would be more or fewer, or where it is of another height", () => {
    const moves = (sideLays: string) =>
      mendsOf(bandText({ sideLays }), CODE).filter(({ title }) => title.startsWith("Move"));
    assert.deepEqual(moves(LAYS.replace("8 of field", "9 of field")), []);
    assert.deepEqual(moves(LAYS.replace("1 of liner", "2 of liner")), []);
  });
});

import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "cut/under-half";
const across = (width: string) => ({ size: `12 1/4 + ${width} x 3` });
const up = (height: string) => ({ size: `24 3/8 x 6 1/4 + ${height}` });

describe("cut/under-half", () => {
  it("tells a stack bond's cut one nanometre under half, and is silent at half", () => {
    assert.deepEqual(messages(across("3 - nm"), CODE), [
      "1 piece at the right end is 3- in wide; half a tile, 3 in, is wanted",
    ]);
    assert.deepEqual(messages(across("3"), CODE), []);
    assert.equal(findings(across("2 1/2"), CODE)[0]!.severity, "warning");
  });

  it("leaves a running bond's end cuts to the sliver limit", () => {
    const text = { bond: "running 1/2", size: "12 1/4 + 2 x 6 1/8" };
    assert.deepEqual(messages(text, CODE), []);
  });

  it("holds a running bond's piece to half where it is cut at both sides", () => {
    const between = (width: string) => ({
      bond: "running 1/2",
      size: `${width} x 3`,
      start: "across tile centred on wall\nup full course from bottom",
    });
    assert.deepEqual(messages(between("3 - nm - nm"), CODE), [
      "1 piece between the left end and the right end is 3- in wide; half a tile, 3 in, is wanted",
    ]);
    assert.deepEqual(messages(between("3"), CODE), []);
  });

  it("holds heights to half in any bond", () => {
    for (const bond of ["stack", "running 1/2"]) {
      const low = messages({ ...up("1 1/2 - nm"), bond }, CODE);
      assert.match(
        low.join(),
        /along the top are 1 1\/2- in high; half a tile, 1 1\/2 in, is wanted/,
      );
      assert.deepEqual(messages({ ...up("1 1/2"), bond }, CODE), []);
    }
  });

  it("leaves a sliver to cut/sliver", () => {
    assert.deepEqual(messages(across("2 - nm"), CODE), []);
    assert.equal(
      messages({ ...across("2 - nm"), plan: "rules {\n sliver off\n}" }, CODE).length,
      1,
    );
  });

  it("is silent when the plan turns it off or allows it", () => {
    assert.deepEqual(messages({ ...across("2 1/2"), plan: "rules {\n half off\n}" }, CODE), []);
    const lay = 'allow cut/under-half "a full tile at the door"';
    assert.equal(
      findings({ ...across("2 1/2"), lay }, CODE)[0]!.allowed,
      "a full tile at the door",
    );
  });
});

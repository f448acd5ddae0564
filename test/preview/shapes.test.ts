import assert from "node:assert/strict";
import {
  isCount,
  isFlag,
  isList,
  isMessage,
  isNumber,
  isObject,
  isText,
  objectOf,
  orNull,
} from "../../src/preview/shapes.js";

const ODD = [null, undefined, NaN, Infinity, -1, 1.5, "", "x", true, [], {}, () => 1];

describe("checks of what is posted", () => {
  it("tell kinds of values apart", () => {
    const passing = (check: (value: unknown) => boolean) => ODD.filter((value) => check(value));
    assert.deepEqual(passing(isText), ["", "x"]);
    assert.deepEqual(passing(isFlag), [true]);
    assert.deepEqual(passing(isNumber), [-1, 1.5]);
    assert.deepEqual(passing(isCount), []);
    assert.equal(isCount(0), true);
    assert.deepEqual(passing(isList), [[]]);
    assert.deepEqual(passing(isObject), [{}]);
    assert.deepEqual(passing(orNull(isText)), [null, "", "x"]);
  });

  it("ask for every key of an object, and pass over others", () => {
    const check = objectOf({ a: isText, b: isFlag });
    assert.equal(check({ a: "", b: true, c: 1 }), true);
    assert.equal(check({ a: "" }), false);
  });

  it("know a message by its type, and nothing that all objects have", () => {
    const shapes = { ready: {}, pin: { pinned: isFlag } };
    assert.equal(isMessage(shapes, { type: "ready" }), true);
    assert.equal(isMessage(shapes, { type: "pin" }), false);
    for (const type of ["toString", "constructor", "__proto__", 3, undefined]) {
      assert.equal(isMessage(shapes, { type }), false);
    }
  });
});

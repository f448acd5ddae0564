// What the benchmark measures; bundled and minified first, as the command line is.
export { compare, comparisonText } from "../../src/compare/index.js";
export { drawHeadless } from "../../src/drawing/headless.js";
export { buildScene } from "../../src/drawing/index.js";
export { run } from "../../src/engine.js";
export { parse, resolve } from "../../src/language/index.js";
export { check } from "../../src/rules/index.js";
export { solve } from "../../src/solver/index.js";
export { choose, scoreOf } from "../../src/solver/choose/index.js";
export { latticeOf, moduleAcross, moduleUp } from "../../src/solver/lattice.js";
export { layPieces } from "../../src/solver/pieces.js";
export { regionOf } from "../../src/solver/region.js";

export { choose, type Chosen } from "./choose.js";
export { type CleanStart, nearestClean } from "./nearest-clean.js";
export { compareScores, firstDifference, MEASURES } from "./compare.js";
export { scoreOf, type Laid } from "./score-laid.js";

export { choose, type Chosen } from "./choose.js";
export { compareScores, firstDifference, MEASURES } from "./compare.js";
export { scoreOf, type Laid } from "./score-laid.js";

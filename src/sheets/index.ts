export type { FindingJson } from "./finding-json.js";
export type { LayReading, SmallestCut } from "./reading.js";
export { choiceText } from "./choice-text.js";
export { findingJson } from "./finding-json.js";
export { layReading } from "./reading.js";
export { readingText } from "./reading-text.js";
export { showText } from "./show-text.js";
export { solvedJson } from "./solved-json.js";
export { acrossWords, upWords } from "./start-words.js";

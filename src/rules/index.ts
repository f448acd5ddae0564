export type { Finding, Rule, RuleEntry } from "./rule.js";
export { check } from "./check.js";
export { RULES } from "./table.js";
export { leastJoint, leastLongJoint, leastMovement } from "./trade.js";

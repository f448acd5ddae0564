import { DocumentState } from "../../src/service/document-state.js";
import { Plans } from "./plans.js";

/** What one version of a text comes to, for tests of the parts that the service is made of. */
export function stateOf(text: string, plans = new Plans()): DocumentState {
  return new DocumentState(plans.open(text), plans);
}

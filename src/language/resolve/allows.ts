import type { Allow } from "../../model/index.js";
import type { AllowStatement, Statement } from "../syntax.js";
import type { Report } from "./report.js";

/** The `allow`s of a block. Any code of the shape group/rule is taken: the rules know which there are. */
export function resolveAllows(body: readonly Statement[], report: Report): Allow[] {
  const allows = body.filter((part): part is AllowStatement => part.kind === "allow");
  return allows.flatMap((allow) => {
    if (allow.reason.text.trim() === "") {
      const message = 'found no reason, wanted one in the quotes, such as "hidden behind the door"';
      report.tell("plan/allow", allow.reason, message);
      return [];
    }
    return [{ code: allow.code.text, reason: allow.reason.text, origin: report.origin(allow) }];
  });
}

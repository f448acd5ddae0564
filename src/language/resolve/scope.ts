import type { Unit } from "../../measure/index.js";
import type { Tile, Trim } from "../../model/index.js";
import type { NameUse } from "../syntax.js";
import type { Value } from "./evaluate.js";
import { Names } from "./names.js";
import type { Report } from "./report.js";
import { Shelf } from "./shelf.js";

/** What the statements of one file may refer to, and where they tell what is wrong. */
export class Scope {
  readonly lets = new Names<Value>("a length");
  readonly tiles = new Names<Tile>("a tile");
  readonly trims = new Names<Trim>("a trim");
  readonly shelf = new Shelf();

  constructor(
    readonly report: Report,
    /** What a bare number is in. */
    readonly units: Unit,
  ) {}

  /** An unknown length; `a-b` may have been meant as a subtraction. */
  tellUnknownLet(name: NameUse): void {
    const at = name.text.indexOf("-");
    const [left, right] = [name.text.slice(0, at), name.text.slice(at + 1)];
    if (at < 0 || !this.lets.find(left) || !this.lets.find(right)) {
      this.lets.tellUnknown(name, this.report);
      return;
    }
    const message = `found no length called \`${name.text}\`; to subtract, write \`${left} - ${right}\``;
    this.report.tell("plan/name-unknown", name, message);
  }
}

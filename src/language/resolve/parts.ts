import type { Span } from "../line-table.js";
import type { Statement } from "../syntax.js";
import type { Report } from "./report.js";

type OfKind<Part, Kind> = Extract<Part, { readonly kind: Kind }>;

/** The statements of a block by their kind. */
export class Parts<Part extends Statement> {
  private readonly firsts = new Map<string, Part>();
  private readonly broken = new Set<string>();

  /** Tells each statement that is said twice; `many` may be. */
  constructor(
    private readonly body: readonly Part[],
    private readonly report: Report,
    private readonly wall?: string,
    many: readonly Part["kind"][] = [],
  ) {
    for (const part of body) {
      if (part.kind === "broken") this.broken.add(part.meant);
      else if (part.kind !== "allow" && !many.includes(part.kind)) this.addOnce(part);
    }
  }

  first<Kind extends Part["kind"]>(kind: Kind): OfKind<Part, Kind> | undefined {
    return this.firsts.get(kind) as OfKind<Part, Kind> | undefined;
  }

  all<Kind extends Part["kind"]>(kind: Kind): OfKind<Part, Kind>[] {
    return this.body.filter((part): part is OfKind<Part, Kind> => part.kind === kind);
  }

  /** Whether a line that could not be understood would have said this. */
  isBroken(kind: string): boolean {
    return this.broken.has(kind);
  }

  /** The statement, or undefined and a message at `block`; a line that is only broken has been told. */
  need<Kind extends Part["kind"]>(
    kind: Kind,
    block: { readonly head: Span },
    message: string,
  ): OfKind<Part, Kind> | undefined {
    const part = this.first(kind);
    if (!part && !this.isBroken(kind)) {
      this.report.tell("plan/missing", block.head, message, { wall: this.wall });
    }
    return part;
  }

  private addOnce(part: Part): void {
    const first = this.firsts.get(part.kind);
    if (!first) {
      this.firsts.set(part.kind, part);
      return;
    }
    const message = `found \`${part.kind}\` again, wanted it once in this block`;
    const related = [this.report.place(first.head, "the first one")];
    this.report.tell("plan/said-twice", part.head, message, { wall: this.wall, related });
  }
}

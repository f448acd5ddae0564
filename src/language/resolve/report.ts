import type { Diagnostic, Origin, RelatedPlace, Severity, SourceRange } from "../../model/index.js";
import type { LineTable, Span } from "../line-table.js";
import type { PlanCode } from "./plan-code.js";
import type { SyntaxProblem } from "../syntax-problem.js";

/** What a diagnostic may carry besides its message. */
export interface Details {
  readonly severity?: Severity;
  readonly wall?: string | undefined;
  readonly related?: readonly RelatedPlace[];
}

/** Collects what is to be told about one file. */
export class Report {
  readonly diagnostics: Diagnostic[] = [];

  constructor(
    readonly file: string,
    private readonly lines: LineTable,
  ) {}

  tell(code: PlanCode, span: Span, message: string, details: Details = {}): void {
    this.push(code, this.lines.range(span), message, details);
  }

  /** Tells of a fact that was resolved before, at its head. */
  tellAt(code: PlanCode, { head }: Origin, message: string, details: Details = {}): void {
    this.push(code, head, message, details);
  }

  private push(code: PlanCode, range: SourceRange, message: string, details: Details): void {
    const { severity = "error", wall, related } = details;
    this.diagnostics.push({
      code,
      severity,
      message,
      file: this.file,
      range,
      ...(wall === undefined ? {} : { wall }),
      ...(related === undefined ? {} : { related }),
    });
  }

  tellSyntax(problems: readonly SyntaxProblem[]): void {
    for (const { code, message, start, end } of problems) {
      const range = this.lines.range({ start, end });
      this.diagnostics.push({ code, severity: "error", message, file: this.file, range });
    }
  }

  place(span: Span, message: string): RelatedPlace {
    return { file: this.file, range: this.lines.range(span), message };
  }

  origin(statement: Span & { readonly head: Span }): Origin {
    const { file, lines } = this;
    return { file, range: lines.range(statement), head: lines.range(statement.head) };
  }
}

/** The place of a fact that was resolved before, for `related`. */
export function placeOf({ file, head }: Origin, message: string): RelatedPlace {
  return { file, range: head, message };
}

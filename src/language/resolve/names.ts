import type { Origin } from "../../model/index.js";
import { didYouMean } from "../nearest.js";
import type { Span } from "../line-table.js";
import type { Word } from "../syntax.js";
import { placeOf } from "./report.js";
import type { Report } from "./report.js";

/** What a name stands for; null when its declaration could not be understood, which has been told. */
export interface Declared<Thing> {
  readonly value: Thing | null;
  readonly origin: Origin;
}

/** The names of one kind of thing in a file. */
export class Names<Thing> {
  private readonly declared = new Map<string, Declared<Thing>>();
  /** Set when a declaration has lost its name: an unknown name may well be that one. */
  private hasNameless = false;

  /** `what` as messages call it, with its article: "a tile". */
  constructor(readonly what: string) {}

  find(name: string): Declared<Thing> | undefined {
    return this.declared.get(name);
  }

  keys(): Iterable<string> {
    return this.declared.keys();
  }

  /** What could be understood, in the order of the declarations. */
  values(): Thing[] {
    return [...this.declared.values()].flatMap(({ value }) => (value === null ? [] : [value]));
  }

  entries(): Iterable<[string, Declared<Thing>]> {
    return this.declared.entries();
  }

  /**
   * Takes the name. One that is taken is told, and false says that the first one of this file stays; one
   * that came with a used file gives way.
   */
  declare(name: Word, thing: Declared<Thing>, report: Report): boolean {
    const first = this.declared.get(name.text);
    if (first) this.tellTaken(name.text, name, first, report);
    if (first?.origin.file === report.file) return false;
    this.declared.set(name.text, thing);
    return true;
  }

  tellTaken(name: string, at: Span, first: Declared<Thing>, report: Report): void {
    const message = `found ${this.what} called \`${name}\` again, wanted another name`;
    const related = [placeOf(first.origin, "the first one")];
    report.tell("plan/name-twice", at, message, { related });
  }

  /** Sets what a name stands for, whether it is taken or not. */
  set(name: string, thing: Declared<Thing>): void {
    this.declared.set(name, thing);
  }

  loseName(): void {
    this.hasNameless = true;
  }

  tellUnknown(name: Word, report: Report, wall?: string): void {
    if (this.hasNameless) return;
    const message = `found no ${this.what.replace(/^an? /, "")} called \`${name.text}\`${didYouMean(name.text, this.keys())}`;
    report.tell("plan/name-unknown", name, message, { wall });
  }
}

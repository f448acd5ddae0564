import type { Diagnostic } from "../../model/index.js";
import { parseUsed } from "../parse-used.js";
import type { Source } from "../source.js";
import type { PlanStatement, UseStatement } from "../syntax.js";
import { asLength } from "./evaluate.js";
import { resolveFile } from "./file.js";
import type { ResolvedFile } from "./file.js";
import { isAbsolute, isInside, pathFrom } from "./file-path.js";
import type { Declared, Names } from "./names.js";
import type { Scope } from "./scope.js";

const EXTENSION = ".tileplan";
/** Files that use files that use files: deeper than this is a mistake, and each costs the reader's stack. */
const DEEPEST = 50;
/** Of a used file's faults this many are listed. */
const MOST_RELATED = 10;

/** The files that a plan uses, each read once. */
export class Library {
  private readonly files = new Map<string, ResolvedFile | null>();
  /** The files that are being resolved, outermost first. */
  private readonly open: string[];

  constructor(private readonly source: Source) {
    this.open = [pathFrom(source.file, source.root, nameOf(source.file))];
  }

  /** Brings the stock and the lengths of a used file into a scope; what hinders it is told at the `use`. */
  bring(use: UseStatement, scope: Scope): void {
    const path = this.pathOf(use, scope);
    if (path === null) return;
    const file = this.load(path);
    if (!file) {
      const message = `found no file \`${use.path.text}\`, wanted one beside this plan or in its folders`;
      scope.report.tell("plan/use-missing", use.path, message);
      return;
    }
    bringLets(file, use, scope);
    bringNames(file.scope.tiles, scope.tiles, use, scope);
    bringNames(file.scope.trims, scope.trims, use, scope);
    scope.shelf.bring(file.scope.shelf, use.path);
    tellFaults(file.scope.report.diagnostics, use, scope);
    tellLeftOut(file.parts.all("wall"), use, scope);
  }

  private pathOf(use: UseStatement, scope: Scope): string | null {
    const { text } = use.path;
    const tell = (code: "plan/use-outside" | "plan/use-circle", message: string): null => {
      scope.report.tell(code, use.path, message);
      return null;
    };
    if (isAbsolute(text) || text.includes("\\")) {
      return tell(
        "plan/use-outside",
        `found \`${text}\`, wanted a path from this file, with \`/\` between folders`,
      );
    }
    if (!text.endsWith(EXTENSION)) {
      return tell(
        "plan/use-outside",
        `found \`${text}\`, wanted a file that ends in \`${EXTENSION}\``,
      );
    }
    const path = pathFrom(scope.report.file, this.source.root, text);
    if (!isInside(path, this.source.root)) {
      return tell(
        "plan/use-outside",
        `found \`${text}\`, which leaves the workspace; wanted a file inside it`,
      );
    }
    if (this.open.includes(path)) {
      const circle = [...this.open.slice(this.open.indexOf(path)), path].map(nameOf);
      return tell("plan/use-circle", `found files that use each other: ${circle.join(" uses ")}`);
    }
    if (this.open.length > DEEPEST) {
      return tell(
        "plan/use-circle",
        `found more than ${DEEPEST} files that use one another in a row`,
      );
    }
    return path;
  }

  private load(path: string): ResolvedFile | null {
    const known = this.files.get(path);
    if (known !== undefined) return known;
    const text = readSafely(this.source, path);
    this.open.push(path);
    const file = text === null ? null : resolveFile(parseUsed(text), path, this);
    this.open.pop();
    this.files.set(path, file);
    return file;
  }
}

/** A host that throws has no such file. */
function readSafely(source: Source, path: string): string | null {
  try {
    return source.read(path);
  } catch {
    return null;
  }
}

function nameOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1);
}

/** A bare number of a used file is in that file's units. */
function bringLets(file: ResolvedFile, use: UseStatement, scope: Scope): void {
  for (const [name, declared] of file.scope.lets.entries()) {
    const value = declared.value && asLength(declared.value, file.scope);
    bringName(name, { ...declared, value }, scope.lets, use, scope);
  }
}

function bringNames<Thing>(
  from: Names<Thing>,
  to: Names<Thing>,
  use: UseStatement,
  scope: Scope,
): void {
  for (const [name, declared] of from.entries()) bringName(name, declared, to, use, scope);
}

/** The same declaration may come by two ways; two of one name may not. */
function bringName<Thing>(
  name: string,
  declared: Declared<Thing>,
  to: Names<Thing>,
  use: UseStatement,
  scope: Scope,
): void {
  const first = to.find(name);
  if (!first) to.set(name, declared);
  else if (first.origin.file !== declared.origin.file) {
    to.tellTaken(name, use.path, first, scope.report);
  }
}

function tellFaults(faults: readonly Diagnostic[], use: UseStatement, { report }: Scope): void {
  const [first] = faults;
  if (!first) return;
  const severity = faults.some((fault) => fault.severity === "error") ? "error" : "warning";
  const count = faults.length === 1 ? "a fault" : `${faults.length} faults, the first`;
  const message = `found ${count} in \`${use.path.text}\`, line ${first.range.start.line + 1}: ${first.message}`;
  const related = faults
    .slice(0, MOST_RELATED)
    .map(({ file, range, message: text }) => ({ file, range, message: text }));
  report.tell("plan/use-fault", use.path, message, { severity, related });
}

function tellLeftOut(walls: readonly PlanStatement[], use: UseStatement, { report }: Scope): void {
  if (walls.length === 0) return;
  const message = `found ${walls.length === 1 ? "a wall" : `${walls.length} walls`} in \`${use.path.text}\`, wanted stock and lengths alone: the rest of a used file is left out`;
  report.tell("plan/use-left-out", use.path, message, { severity: "warning" });
}

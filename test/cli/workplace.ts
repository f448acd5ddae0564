import { mkdtempSync, mkdirSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

/** A folder of files that goes away after the test. */
export class Workplace {
  readonly folder = realpathSync(mkdtempSync(path.join(tmpdir(), "gaugelath-")));

  /** Writes files, by their paths in the folder. */
  write(files: Readonly<Record<string, string | Uint8Array>>): void {
    for (const [name, content] of Object.entries(files)) {
      mkdirSync(path.dirname(this.path(name)), { recursive: true });
      writeFileSync(this.path(name), content);
    }
  }

  path(name: string): string {
    return path.join(this.folder, name);
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** A workplace for the tests of a `describe`, removed after them. */
export function workplace(files: Readonly<Record<string, string | Uint8Array>> = {}): Workplace {
  const place = new Workplace();
  before(() => place.write(files));
  after(() => place.remove());
  return place;
}

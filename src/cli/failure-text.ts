import { paintFor } from "./colours.js";
import type { Failure } from "./failure.js";
import type { Host } from "./host.js";
import { harmless } from "./harmless.js";

/** Says on standard error why something could not run. */
export function sayFailure({ message, hint }: Failure, host: Host): void {
  const paint = paintFor(host.colours.err);
  const said = `${paint("error", "gaugelath")}: ${harmless(message)}\n`;
  host.err(said + (hint === null ? "" : `   ${paint("quiet", "hint")} ${harmless(hint)}\n`));
}

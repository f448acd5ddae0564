import type { Source } from "./source.js";
import { isAbsolute, isInside, pathFrom } from "./resolve/file-path.js";

/** The path of the file that `use "written"` in `file` names; null when it leaves the root. */
export function usedPath(
  { root }: Pick<Source, "root">,
  file: string,
  written: string,
): string | null {
  if (isAbsolute(written) || written.includes("\\")) return null;
  const path = pathFrom(file, root, written);
  return isInside(path, root) ? path : null;
}

import path from "node:path";

/** A path as the language and the reports write it: forward slashes everywhere. */
export function slashed(file: string): string {
  return path.sep === "/" ? file : file.split(path.sep).join("/");
}

/** Whether a path is a folder or stands somewhere below it; both absolute. */
export function isInside(file: string, folder: string): boolean {
  const relative = path.relative(folder, file);
  return relative.split(path.sep)[0] !== ".." && !path.isAbsolute(relative);
}

/** A path as a person reads it: from the working folder where it is inside, else whole. */
export function shownPath(file: string, folder: string): string {
  return slashed(isInside(file, folder) ? path.relative(folder, file) || "." : file);
}

/** Paths with forward slashes, as hosts name their files; no file is touched here. */

/** The path of a file that another one names, without `.` and `..`. */
export function pathFrom(file: string, root: string, written: string): string {
  const folder = file.slice(0, file.lastIndexOf("/") + 1);
  const base = isAbsolute(folder) || !isAbsolute(root) ? folder : `${root}/${folder}`;
  return tidyPath(`${base}${written}`);
}

/** Whether a path without `.` and `..` lies in a folder. */
export function isInside(path: string, root: string): boolean {
  const folder = tidyPath(root);
  if (folder === "") return !isAbsolute(path) && path !== ".." && !path.startsWith("../");
  return path.startsWith(folder.endsWith("/") ? folder : `${folder}/`);
}

/** From a drive, a server or the root of the disk. */
export function isAbsolute(path: string): boolean {
  return path.startsWith("/") || /^[A-Za-z][A-Za-z0-9+.-]*:/.test(path);
}

function tidyPath(path: string): string {
  const lead = path.startsWith("/") ? "/" : "";
  const kept: string[] = [];
  for (const part of path.split("/")) {
    if (part === "" || part === ".") continue;
    if (part === ".." && kept.length > 0 && kept.at(-1) !== "..") kept.pop();
    else if (part !== ".." || lead === "") kept.push(part);
  }
  return lead + kept.join("/");
}

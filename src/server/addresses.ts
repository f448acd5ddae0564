import { URI } from "vscode-uri";

/** Stands in a path for an address without an authority, since a path can't hold an empty part. */
const NO_AUTHORITY = "-";

/**
 * The path by which the service knows a file: `file:///home/a.tileplan` is `file:/-/home/a.tileplan`,
 * so that files of every file system are told apart and paths can be followed by their parts.
 */
export function pathOf(uri: string): string {
  const { scheme, authority, path } = URI.parse(uri);
  if (!path.startsWith("/")) return `${scheme}:${path}`;
  return `${scheme}:/${authority || NO_AUTHORITY}${path}`;
}

/** The address of a path made by `pathOf`. */
export function uriOf(file: string): string {
  const [, scheme = "", authority, path] = /^([^:]+):(?:\/([^/]*)(\/.*)?)?/.exec(file) ?? [];
  if (authority === undefined)
    return URI.from({ scheme, path: file.slice(scheme.length + 1) }).toString();
  return URI.from({
    scheme,
    authority: authority === NO_AUTHORITY ? "" : authority,
    path: path ?? "/",
  }).toString();
}

// The sittings of the editor's tests. Each has a window of its own, with the suites of the folder
// of its name under test/editor/.

/**
 * @type {readonly { name: string, trusted: boolean, packaged: boolean, web: boolean, git: boolean }[]}
 * `trusted`: the workspace is; `packaged`: the extension is the installed VSIX, else the checkout;
 * `web`: it runs in the browser's extension host; `git`: the workspace is a repository, and the
 * editor's Git is on.
 */
export const SITTINGS = [
  { name: "live", trusted: true, packaged: false, web: false, git: false },
  { name: "rooms", trusted: true, packaged: false, web: false, git: false },
  { name: "git", trusted: true, packaged: false, web: false, git: true },
  { name: "reload", trusted: true, packaged: false, web: false, git: false },
  { name: "untrusted", trusted: false, packaged: false, web: false, git: false },
  { name: "packaged", trusted: true, packaged: true, web: false, git: false },
  { name: "web", trusted: true, packaged: false, web: true, git: false },
];

import type * as vscode from "vscode";

type Host = typeof import("./extension.node.js") | typeof import("./extension.web.js");

/**
 * The extension: one program for both kinds of extension host, which have nearly all in common. What
 * only Node has is loaded where there is Node, and at once: the time of activation that the editor
 * tells has all of it in it.
 */
export function activate(context: vscode.ExtensionContext): void {
  hostsOwn().activate(context);
}

/* eslint-disable @typescript-eslint/no-require-imports -- An import can't wait until it is asked for, and be there at once. */
function hostsOwn(): Host {
  // A browser's extension host is a worker; only workers have `importScripts`.
  if ("importScripts" in globalThis) return require("./extension.web.js") as Host;
  return require("./extension.node.js") as Host;
}

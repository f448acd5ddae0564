// The folders of src/, from the ground up. A folder imports only from those before it, through
// their faces (index.ts unless others are named), and only the packages named with it. The linter
// holds both (import-direction.mjs).

/** @type {readonly { name: string, packages: readonly string[], faces?: readonly string[] }[]} */
export const FLOORS = [
  { name: "measure", packages: [] },
  { name: "model", packages: [] },
  { name: "language", packages: ["chevrotain"] },
  { name: "solver", packages: [] },
  { name: "rules", packages: [] },
  { name: "takeoff", packages: [] },
  // Its second face stands in for a page where there is none, so that a webview does without svgdom.
  {
    name: "drawing",
    packages: ["@svgdotjs/svg.js", "svgdom"],
    faces: ["index", "headless"],
  },
  // Its second face prints (PDF, DXF): it brings heavy packages that most programs don't need.
  {
    name: "sheets",
    packages: [
      ...["csv-stringify", "mdast", "mdast-util-gfm-table", "mdast-util-to-markdown"],
      ...["pdfkit", "fontkit", "@tarikjabiri/dxf"],
    ],
    faces: ["index", "print"],
  },
  { name: "compare", packages: [] },
  { name: "engine", packages: [] },
  { name: "service", packages: [] },
];

/** The programs on top: each may use every floor, and none knows another. */
export const ROOFS = ["cli", "server", "extension", "preview"];

/** The second face of a folder: what only programs without a page, or those that print, may load. */
export const FACES = ["drawing/headless.js", "sheets/print.js"];

/** What programs say to each other: the only files of a roof that another roof may import. */
export const CONTRACTS = [
  "server/protocol.js",
  "preview/messages.js",
  "preview/sheet-messages.js",
  "preview/comparison-messages.js",
];

/** Whether `from` may import `to`; both are names of folders (or of files) straight under src/. */
export function mayImport(from, to) {
  const floor = FLOORS.findIndex((entry) => entry.name === to);
  if (floor < 0) return false;
  if (ROOFS.includes(from)) return true;
  return floor < FLOORS.findIndex((entry) => entry.name === from);
}

/** The files of a folder that others may import, without their ending. */
export function facesOf(folder) {
  return FLOORS.find((entry) => entry.name === folder)?.faces ?? ["index"];
}

/** The packages that a folder may import, or null where every one is allowed (the roofs). */
export function packagesOf(folder) {
  return FLOORS.find((entry) => entry.name === folder)?.packages ?? null;
}

// An ESLint rule: imports between the folders of src/ run downward only, and enter another folder by
// its faces alone. It sees every way to import: import, export from, import(), import types.
import { builtinModules } from "node:module";
import path from "node:path";
import { CONTRACTS, FACES, FLOORS, mayImport, packagesOf, ROOFS } from "./house.mjs";

const KNOWN = [...FLOORS.map((floor) => floor.name), ...ROOFS];

/** `src/rules/cut/sliver.ts` -> `rules`; `src/engine.ts` -> `engine`. */
function folderOf(fileInSrc) {
  return fileInSrc.split("/")[0].replace(/\.[jt]s$/, "");
}

/** What is wrong with an import, or null. Both paths are relative to src/, with forward slashes. */
export function faultOf(file, specifier) {
  const from = folderOf(file);
  if (!KNOWN.includes(from)) return { messageId: "unknown", data: { from } };
  if (!specifier.startsWith(".")) return packageFault(from, specifier);
  const target = path.posix.join(path.posix.dirname(file), specifier);
  // The programs tell their version.
  if (target === "../package.json" && ROOFS.includes(from)) return null;
  const to = folderOf(target);
  if (to === from) return null;
  if (CONTRACTS.includes(target) && ROOFS.includes(from)) return null;
  if (!mayImport(from, to)) return { messageId: "upward", data: { from, to } };
  const face = target === `${to}/index.js` || target === `${to}.js` || FACES.includes(target);
  return face ? null : { messageId: "face", data: { to } };
}

function packageFault(from, specifier) {
  const allowed = packagesOf(from);
  if (allowed === null) return null;
  const name = specifier.match(/^(@[^/]+\/)?[^/]+/)?.[0] ?? specifier;
  const node = specifier.startsWith("node:") || builtinModules.includes(name);
  if (!node && allowed.includes(name)) return null;
  return { messageId: "package", data: { from, name } };
}

export const importDirection = {
  meta: {
    type: "problem",
    schema: [],
    messages: {
      upward: "{{from}} may not import {{to}}: imports run downward only (.scripts/house.mjs).",
      face: "Import {{to}} through its face, {{to}}/index.js.",
      package: "{{from}} may not import {{name}}: .scripts/house.mjs names its packages.",
      unknown: "{{from}} is not in the list of folders in .scripts/house.mjs.",
    },
  },
  create(context) {
    const src = path.join(context.cwd, "src");
    const file = path.relative(src, context.filename).split(path.sep).join("/");
    const look = (node) => {
      const source = node?.value ?? node?.literal?.value;
      if (typeof source !== "string") return;
      const fault = faultOf(file, source);
      if (fault) context.report({ node, ...fault });
    };
    return {
      ImportDeclaration: (node) => look(node.source),
      ExportNamedDeclaration: (node) => look(node.source),
      ExportAllDeclaration: (node) => look(node.source),
      ImportExpression: (node) => look(node.source),
      TSImportType: (node) => look(node.source ?? node.argument),
    };
  },
};

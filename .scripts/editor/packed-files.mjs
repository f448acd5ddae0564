/** What goes into the package for VS Code as it stands in the folder; what is made for it besides, pack.mjs says. */
export const FILES = [
  "LICENSE",
  "CHANGELOG.md",
  "language-configuration.json",
  "syntaxes/tileplan.tmLanguage.json",
  "syntaxes/snippets.json",
  "media/icon.png",
  "media/file-light.svg",
  "media/file-dark.svg",
  "media/preview.css",
  "media/walkthrough",
  "dist/extension.js",
  "dist/server.js",
  "dist/preview.js",
  "dist/print.js",
  "dist/fonts",
  "dist/first-wall.svg",
];

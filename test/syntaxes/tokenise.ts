import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import type { IGrammar } from "vscode-textmate";

// Both packages are CommonJS without names that Node can see.
const require = createRequire(import.meta.url);
const { INITIAL, parseRawGrammar, Registry } =
  require("vscode-textmate") as typeof import("vscode-textmate");
const { createOnigScanner, createOnigString, loadWASM } =
  require("vscode-oniguruma") as typeof import("vscode-oniguruma");

const GRAMMAR = new URL("../../syntaxes/tileplan.tmLanguage.json", import.meta.url);

/** The plan's grammar, as an editor loads it. */
export async function loadGrammar(): Promise<IGrammar> {
  await loadWASM(readFileSync(require.resolve("vscode-oniguruma/release/onig.wasm")));
  const registry = new Registry({
    onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
    loadGrammar: () =>
      Promise.resolve(parseRawGrammar(readFileSync(GRAMMAR, "utf8"), "tileplan.tmLanguage.json")),
  });
  const grammar = await registry.loadGrammar("source.tileplan");
  return grammar!;
}

/** Each line of a text, and under it what the grammar takes its parts for. */
export function tokenise(grammar: IGrammar, text: string): string {
  let stack = INITIAL;
  const shown: string[] = [];
  for (const line of text.split("\n")) {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, stack);
    stack = ruleStack;
    shown.push(`>${line}`);
    for (const { startIndex, endIndex, scopes } of tokens) {
      const part = line.slice(startIndex, endIndex);
      const inner = scopes.slice(1).map((scope) => scope.replace(/\.tileplan$/, ""));
      if (part.trim() !== "") shown.push(`  ${part.trim()} = ${inner.join(" ") || "(plain)"}`);
    }
  }
  return `${shown.join("\n")}\n`;
}

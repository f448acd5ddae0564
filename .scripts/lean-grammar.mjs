// Has bundles start sooner: they hold the first tokens of the grammar's ways (src/language/first-tokens.ts)
// as what they come to, and what Chevrotain asks of lodash in few words of our own.
import path from "node:path";
import { tsImport } from "tsx/esm/api";
import { ROOT } from "./steps.mjs";

const PLAIN_LODASH = path.join(ROOT, ".scripts", "plain-lodash.mjs");

export const leanGrammar = {
  name: "lean-grammar",
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^lodash-es$/ }, () => ({ path: PLAIN_LODASH, sideEffects: false }));
    onLoad({ filter: /[\\/]src[\\/]language[\\/]first-tokens\.ts$/ }, async ({ path: file }) => {
      const { firstTokens } = await tsImport(file, import.meta.url);
      return { contents: `export const firstTokens = () => (${JSON.stringify(firstTokens())});` };
    });
  },
};

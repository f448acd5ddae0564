// Bundles hold the first tokens of the grammar's ways (src/language/first-tokens.ts) as what they come
// to, so that no program works them out when it starts.
import { tsImport } from "tsx/esm/api";

export const preparedGrammar = {
  name: "prepared-grammar",
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]src[\\/]language[\\/]first-tokens\.ts$/ }, async ({ path: file }) => {
      const { firstTokens } = await tsImport(file, import.meta.url);
      return { contents: `export const firstTokens = () => (${JSON.stringify(firstTokens())});` };
    });
  },
};

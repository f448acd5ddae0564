import js from "@eslint/js";
import tseslint from "typescript-eslint";
import { importDirection } from "./.scripts/import-direction.mjs";

const NODE_GLOBALS = Object.fromEntries(
  ["Buffer", "URL", "URLSearchParams", "console", "fetch", "process", "setTimeout"].map((name) => [
    name,
    "readonly",
  ]),
);

export default tseslint.config(
  { ignores: ["dist/", ".vscode-test/"] },
  js.configs.recommended,
  {
    files: ["**/*.ts"],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      // Columns of numbers are read by index: the compiler's noUncheckedIndexedAccess asks for a
      // `!` there, and each says "within bounds".
      "@typescript-eslint/no-non-null-assertion": "off",
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      // A property is left out of an object by naming it beside the rest.
      "@typescript-eslint/no-unused-vars": ["error", { ignoreRestSiblings: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
    },
  },
  {
    files: ["src/**/*.ts"],
    plugins: { house: { rules: { "import-direction": importDirection } } },
    rules: { "house/import-direction": "error" },
  },
  {
    files: ["**/*.mjs", "**/*.js", "**/*.cjs"],
    languageOptions: { globals: NODE_GLOBALS },
  },
);

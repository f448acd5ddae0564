import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import Ajv from "ajv-draft-04";
import addFormats from "ajv-formats";

/** The published schema (OASIS, sarif-2.1.0-rtm.5), as Microsoft's SARIF kit carries it. */
const schema = createRequire(import.meta.url).resolve(
  "@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json",
);
// One of its patterns is no regular expression by the rules of Unicode mode.
const ajv = new Ajv({ strict: false, allErrors: true, unicodeRegExp: false });
addFormats(ajv);
const validate = ajv.compile(JSON.parse(readFileSync(schema, "utf8")) as object);

/** Whether a log is SARIF 2.1.0 by its schema. */
export function isSarif(log: unknown): boolean {
  return validate(log);
}

/** Fails with what the schema finds wrong. */
export function assertSarif(log: unknown): void {
  assert.ok(validate(log), JSON.stringify(validate.errors, null, 2));
}

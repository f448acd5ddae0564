import schema from "./sheet.schema.json" with { type: "json" };

/** The JSON Schema (draft 7) of a sheet's JSON. */
export const SHEET_SCHEMA: object = schema;

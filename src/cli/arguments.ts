import { parseArgs, type ParseArgsConfig } from "node:util";
import { Failure } from "./failure.js";
import { nearest } from "../language/index.js";
import type { CommandName, FailOn, Request, Shard } from "./request.js";

type Options = NonNullable<ParseArgsConfig["options"]>;

const COMMON: Options = {
  strict: { type: "boolean" },
  root: { type: "string" },
  help: { type: "boolean", short: "h" },
};

const COMMANDS: Readonly<Record<CommandName, Options>> = {
  check: { ...COMMON, format: { type: "string" }, shard: { type: "string" } },
  solve: { ...COMMON, format: { type: "string" }, output: { type: "string", short: "o" } },
  options: { ...COMMON, format: { type: "string" }, output: { type: "string", short: "o" } },
  draw: { ...COMMON, output: { type: "string", short: "o" }, room: { type: "boolean" } },
  sheet: {
    ...COMMON,
    output: { type: "string", short: "o" },
    format: { type: "string" },
    paper: { type: "string" },
    only: { type: "string" },
    revision: { type: "string" },
    schema: { type: "boolean" },
  },
  compare: {
    root: { type: "string" },
    from: { type: "string" },
    to: { type: "string" },
    format: { type: "string" },
    output: { type: "string", short: "o" },
    "fail-on": { type: "string" },
    shard: { type: "string" },
    help: { type: "boolean", short: "h" },
  },
  show: { root: { type: "string" }, help: { type: "boolean", short: "h" } },
  tidy: { check: { type: "boolean" }, help: { type: "boolean", short: "h" } },
  serve: { stdio: { type: "boolean" }, help: { type: "boolean", short: "h" } },
  merge: {
    output: { type: "string", short: "o" },
    help: { type: "boolean", short: "h" },
  },
};

/** What a value is called in messages. */
const WANTED: Readonly<Record<string, string>> = {
  format: "a format",
  output: "a file to write",
  root: "a folder",
  from: "a revision",
  to: "a revision",
  "fail-on": "what to fail on",
  shard: "I/N",
  paper: "letter or a4",
  only: "what is wanted of the sheet",
  revision: "a text",
};

/** Reads the words after `gaugelath`. Throws a Failure that says what was found and what is wanted. */
export function readArguments(words: readonly string[]): Request {
  const [first, ...rest] = words;
  if (first === undefined || first === "--help" || first === "-h") return help(null);
  if (first === "--version" || first === "-V") return { command: "version" };
  if (first === "help") return help(rest[0] === undefined ? null : commandNamed(rest[0]));
  const command = commandNamed(first);
  const { values, places } = readOptions(command, rest);
  if (values.help === true) return help(command);
  const reading = { strict: values.strict === true, root: text(values.root) };
  switch (command) {
    case "check": {
      if (places.length === 0) throw missing(command, "a plan to check (a file, a folder, or -)");
      const format = oneOf(values.format, ["text", "json", "sarif"] as const);
      return { command, places, format, shard: shardOf(values.shard), ...reading };
    }
    case "compare":
      return { command, ...compareParts(values, places), ...reading };
    case "merge":
      if (places.length === 0) throw missing(command, "reports to merge");
      return { command, files: places, output: text(values.output) };
    case "tidy":
      if (places.length === 0) throw missing(command, "a plan to tidy (a file, a folder, or -)");
      return { command, places, check: values.check === true };
    case "serve":
      if (values.stdio === true && places.length === 0) return { command };
      throw missing(command, "--stdio, by which an editor talks to it, and nothing else");
    case "show":
      return { command, file: onlyPlace(command, places), ...reading };
    case "solve":
    case "options": {
      const file = onlyPlace(command, places);
      const format = oneOf(values.format, ["text", "json"] as const);
      return { command, file, format, output: text(values.output), ...reading };
    }
    case "draw": {
      const file = onlyPlace(command, places);
      const output = text(values.output);
      if (output === null) throw missing(command, "-o OUT.svg, the picture to write");
      return { command, file, output, room: values.room === true, ...reading };
    }
    case "sheet": {
      if (values.schema === true) return { command: "sheet-schema" };
      const file = onlyPlace(command, places);
      return { command, file, ...sheetParts(values), ...reading };
    }
  }
}

function compareParts(values: Given["values"], places: readonly string[]) {
  const [from, to] = [text(values.from), text(values.to)];
  if (from === null && to !== null) {
    throw new Failure("--to wants --from REV, the revision before", FORMS);
  }
  if (from === null && places.length !== 2) {
    const found = places.length === 0 ? "none" : places.length;
    throw new Failure(`compare wants two plans or two folders; found ${found}`, FORMS);
  }
  return {
    places: places.length === 0 ? ["."] : places,
    from,
    to,
    format: oneOf(values.format, ["text", "markdown", "json", "svg"] as const),
    output: text(values.output),
    failOn: failOnOf(text(values["fail-on"])),
    shard: shardOf(values.shard),
  };
}

function sheetParts(values: Given["values"]) {
  const output = text(values.output);
  if (output === null) throw missing("sheet", "-o OUT, a file (OUT.pdf) or a folder to write");
  const formats = ["pdf", "md", "json", "csv", "svg", "png", "dxf"] as const;
  const format = values.format === undefined ? null : oneOf(values.format, formats);
  if (output === "-" && format === null) {
    throw new Failure("-o - does not say which format", `--format ${formats.join("|")}`);
  }
  return {
    output,
    format,
    paper: paperOf(text(values.paper)),
    only: text(values.only)?.split(",") ?? [],
    revision: text(values.revision),
  };
}

function paperOf(given: string | null): "letter" | "a4" | null {
  const word = given?.toLowerCase() ?? null;
  if (word === null || word === "letter" || word === "a4") return word;
  throw new Failure(`--paper does not know ${JSON.stringify(given)}`, "it knows letter and a4");
}

const FORMS = "compare OLD NEW, or compare --from REV [--to REV] FILE...";

const FAIL_ON = ["new-findings", "more-tiles", "any"] as const;

function failOnOf(given: string | null): readonly FailOn[] {
  return (given?.split(",") ?? []).map((word) => {
    const found = FAIL_ON.find((name) => name === word);
    if (found) return found;
    throw new Failure(
      `--fail-on does not know ${JSON.stringify(word)}`,
      `it knows ${FAIL_ON.join(", ")}`,
    );
  });
}

function shardOf(given: string | true | undefined): Shard | null {
  const words = text(given);
  if (words === null) return null;
  const [, part, of] = /^(\d{1,4})\/(\d{1,4})$/.exec(words)?.map(Number) ?? [];
  if (part !== undefined && of !== undefined && part >= 1 && part <= of) return { part, of };
  throw new Failure(`--shard ${words}: one part of several is wanted, such as 2/4`);
}

function help(about: CommandName | null): Request {
  return { command: "help", about };
}

function commandNamed(word: string): CommandName {
  if (Object.hasOwn(COMMANDS, word)) return word as CommandName;
  if (word.startsWith("-")) {
    throw new Failure(`unknown option ${word}`, "a command comes first: gaugelath --help");
  }
  const near = nearest(word, Object.keys(COMMANDS));
  const hint = near ? `did you mean ${near}?` : `the commands are ${listed(Object.keys(COMMANDS))}`;
  throw new Failure(`unknown command ${JSON.stringify(word)}`, hint);
}

/** `check, solve and draw`. */
function listed(words: readonly string[]): string {
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1)!}`;
}

interface Given {
  readonly values: Readonly<Record<string, string | true>>;
  readonly places: readonly string[];
}

function readOptions(command: CommandName, words: readonly string[]): Given {
  const options = COMMANDS[command];
  const { tokens } = parseArgs({
    args: [...words],
    options,
    strict: false,
    tokens: true,
  });
  const values: Record<string, string | true> = {};
  const places: string[] = [];
  for (const token of tokens) {
    if (token.kind === "positional") places.push(token.value);
    if (token.kind !== "option") continue;
    const option = options[token.name];
    if (!option || !Object.hasOwn(options, token.name)) throw unknownOption(command, token.rawName);
    if (option.type === "boolean") {
      if (token.value !== undefined) throw new Failure(`${token.rawName} takes no value`);
      values[token.name] = true;
    } else {
      if (!token.value) throw new Failure(`${token.rawName} wants ${WANTED[token.name]!} after it`);
      if (values[token.name] !== undefined) throw new Failure(`${token.rawName} is given twice`);
      values[token.name] = token.value;
    }
  }
  return { values, places };
}

function unknownOption(command: CommandName, found: string): Failure {
  const near = nearest(
    found,
    Object.keys(COMMANDS[command]).map((name) => `--${name}`),
  );
  const hint = near ? `did you mean ${near}?` : `its options: gaugelath ${command} --help`;
  return new Failure(`${command} has no option ${found}`, hint);
}

function missing(command: CommandName, wanted: string): Failure {
  return new Failure(`${command} wants ${wanted}`, `with examples: gaugelath ${command} --help`);
}

function onlyPlace(command: CommandName, places: readonly string[]): string {
  const [file, second] = places;
  if (file === undefined) throw missing(command, `a plan to ${command} (a file, or -)`);
  if (second === undefined) return file;
  throw new Failure(`${command} takes one plan; found ${JSON.stringify(second)} as well`);
}

function text(value: string | true | undefined): string | null {
  return typeof value === "string" ? value : null;
}

/** The first of the formats is the default. */
function oneOf<const T extends string>(
  found: string | true | undefined,
  formats: readonly [T, ...T[]],
): T {
  if (found === undefined) return formats[0];
  const format = formats.find((name) => name === found);
  if (format) return format;
  throw new Failure(
    `unknown format ${JSON.stringify(found)}`,
    `the formats are ${formats.join(", ")}`,
  );
}

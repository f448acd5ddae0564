import { type Section, summarise, TEXT_ONLY } from "./summary.js";
import type { Comparison } from "./comparison.js";

/** A comparison for a terminal: a heading a section, a line a fact. */
export function* comparisonText(comparison: Comparison): Generator<string> {
  const sections = summarise(comparison);
  if (sections.length === 0) yield `${TEXT_ONLY}\n`;
  for (const { title, lines } of sections) {
    yield `${title}\n`;
    for (const line of lines) yield `  ${line}\n`;
  }
}

/** A comparison for a review comment. */
export interface MarkdownForm {
  /** At most this many lines a section; the rest are counted. */
  readonly most: number;
}

/**
 * A comparison as Markdown (CommonMark): a bold heading a section, a list item a fact. Names and
 * messages come from a person's file and are escaped.
 */
export function* comparisonMarkdown(
  comparison: Comparison,
  { most }: MarkdownForm,
): Generator<string> {
  const sections = summarise(comparison);
  if (sections.length === 0) yield `${TEXT_ONLY}\n`;
  for (const section of sections) yield* sectionMarkdown(section, most);
}

function* sectionMarkdown({ title, lines }: Section, most: number): Generator<string> {
  yield `**${title}**\n\n`;
  // One that is left over is no shorter to count than to tell.
  const told = lines.length === most + 1 ? lines : lines.slice(0, most);
  for (const line of told) yield `- ${markdown(line)}\n`;
  if (told.length < lines.length) yield `- and ${lines.length - told.length} more\n`;
  yield "\n";
}

/** A text that Markdown shows as it is: no marks, no tags, no mention of a person. */
export function markdown(text: string): string {
  return text
    .replace(/[\s\p{Cc}]+/gu, " ")
    .replace(/[\\`*_{}[\]|~#]/g, "\\$&")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/@/g, "&#64;");
}

/** What a person wrote, so that it reads the same in Markdown. */
export function plain(text: string): string {
  return text.replace(/[\\`*_{}[\]()#+\-.!|<>~&]/g, "\\$&").replace(/[\r\n]+/g, " ");
}

/** A heading: what it is, its name, and its title. */
export function heading(what: string, name: string, title = ""): string {
  return `**${what} ${plain(name)}**${title === "" ? "" : ` ${plain(title)}`}`;
}

/** Lines under one another. */
export function lines(parts: readonly (string | null)[]): string {
  return parts.filter((part) => part !== null && part !== "").join("  \n");
}

/** Text as it stands, in columns. */
export function columns(text: string): string {
  return `\`\`\`text\n${text.replace(/`{3,}/g, "'''").trimEnd()}\n\`\`\``;
}

/** Paragraphs. */
export function paragraphs(parts: readonly (string | null)[]): string {
  return parts.filter((part) => part !== null && part !== "").join("\n\n");
}

import { LIMITS } from "../model/index.js";
import { RULES } from "../rules/index.js";
import { sourceLink } from "./source-link.js";
import { lines, paragraphs, plain } from "./markdown.js";

/** A rule by its code: what it tells, its limit's name and its source; null for an unknown code. */
export function hoverRule(code: string): string | null {
  const rule = RULES.find((each) => each.code === code);
  if (!rule) return null;
  const { limit, source, title, severity } = rule;
  const link = sourceLink(source);
  return paragraphs([
    `**${plain(code)}** (${severity})`,
    plain(title),
    lines([
      limit === null
        ? "only `allow` silences it"
        : `limit: \`rules { ${limit} ... }\`, ${LIMITS[limit].about}`,
      link === null ? `source: ${plain(source)}` : `source: ${plain(source)} [read](${link})`,
    ]),
  ]);
}

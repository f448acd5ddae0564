import { tokenise } from "./lexer.js";
import { Name } from "./tokens.js";

/** Whether a text is one name: a letter followed by letters, digits, `_` and `-`. */
export function isName(text: string): boolean {
  const [first, ...others] = tokenise(text);
  return others.length === 0 && first?.tokenType === Name && first.image === text;
}

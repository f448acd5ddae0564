/**
 * Names and titles come from a person's file. What a picture can't show as a letter is taken out:
 * control characters, marks that turn the writing direction, halves of surrogate pairs and code
 * points that XML forbids. Every kind of white space becomes one space.
 */
export function plainText(text: string): string {
  let plain = "";
  for (const character of text) {
    const code = character.codePointAt(0)!;
    if (isSpace(code)) plain += " ";
    else if (!isUnprintable(code)) plain += character;
  }
  return plain.replace(/ {2,}/g, " ").trim();
}

/** A text as part of an element's id: letters, digits and hyphens stay, the rest is written in hex. */
export function idPart(text: string): string {
  let id = "";
  for (const character of text) {
    id += /[A-Za-z0-9-]/.test(character)
      ? character
      : `_${character.codePointAt(0)!.toString(16)}_`;
  }
  return id;
}

function isSpace(code: number): boolean {
  return (code >= 0x09 && code <= 0x0d) || code === 0xa0 || (code >= 0x2028 && code <= 0x2029);
}

function isUnprintable(code: number): boolean {
  return (
    code < 0x20 ||
    (code >= 0x7f && code < 0xa0) ||
    (code >= 0x200b && code <= 0x200f) ||
    (code >= 0x202a && code <= 0x202e) ||
    (code >= 0x2060 && code <= 0x206f) ||
    code === 0xfeff ||
    (code >= 0xd800 && code <= 0xdfff) ||
    (code & 0xfffe) === 0xfffe
  );
}

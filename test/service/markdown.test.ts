import assert from "node:assert/strict";
import { columns, heading, lines, paragraphs, plain } from "../../src/service/markdown.js";

describe("what a person wrote", () => {
  it("makes no link, no emphasis, no tag and no heading", () => {
    assert.equal(plain("[a](b)"), "\\[a\\]\\(b\\)");
    assert.equal(plain("*a* _b_ `c`"), "\\*a\\* \\_b\\_ \\`c\\`");
    assert.equal(plain("<img> & # 1. - 2"), "\\<img\\> \\& \\# 1\\. \\- 2");
    assert.equal(plain("a \\* b"), "a \\\\\\* b");
  });

  it("stays on its line, and is left as it is where nothing has a meaning", () => {
    assert.equal(plain("a\r\n\nb"), "a b");
    assert.equal(plain('3 x 6, white 1/2" / été'), '3 x 6, white 1/2" / été');
  });

  it("can't end a block of text in columns", () => {
    assert.equal(columns("a\n```\n<b>\n"), "```text\na\n'''\n<b>\n```");
  });
});

describe("Markdown", () => {
  it("has headings with a name and, where there is one, a title", () => {
    assert.equal(heading("wall", "back"), "**wall back**");
    assert.equal(heading("wall", "a-b", "Back_wall"), "**wall a\\-b** Back\\_wall");
  });

  it("joins lines and paragraphs, and leaves out what is missing", () => {
    assert.equal(lines(["a", null, "", "b"]), "a  \nb");
    assert.equal(paragraphs([null, "a", "", "b"]), "a\n\nb");
    assert.equal(paragraphs([lines([]), null]), "");
  });
});

import type { Syntax } from "../language/index.js";
import type { PictureBlock } from "./picture.js";
import type { DocumentState } from "./document-state.js";

/** The blocks and statements that stand in a picture, outer ones before those inside them. */
export function blocksOf({ tree, document }: DocumentState): PictureBlock[] {
  const block = (
    kind: PictureBlock["kind"],
    statement: Syntax.Statement,
    name: string | undefined,
    wall: string | null,
  ): PictureBlock[] => {
    if (name === undefined) return [];
    const place = { uri: document.uri, range: tree.lines.range(statement) };
    return [{ kind, wall, name, place }];
  };
  const inWall = (part: Syntax.WallPart, wall: string): PictureBlock[] => {
    switch (part.kind) {
      case "edge":
        return block("edge", part, part.side, wall);
      case "opening":
        return block(part.opening, part, part.name?.text, wall);
      case "hole":
        return block("hole", part, part.name.text, wall);
      case "lay":
        return block("lay", part, part.name?.text, wall);
      default:
        return [];
    }
  };
  return tree.statements.flatMap((statement) => {
    switch (statement.kind) {
      case "tile":
      case "trim":
        return block(statement.kind, statement, statement.name?.text, null);
      case "wall": {
        const name = statement.name?.text;
        if (name === undefined) return [];
        return [
          ...block("wall", statement, name, name),
          ...statement.body.flatMap((part) => inWall(part, name)),
        ];
      }
      default:
        return [];
    }
  });
}

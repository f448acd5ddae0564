import { findingGroups } from "../drawing/index.js";
import type { Diagnostic, Severity } from "../model/index.js";
import { surfacesOf } from "../solver/index.js";
import { blocksOf } from "./blocks.js";
import { isWhole } from "./compared.js";
import type { DocumentState } from "./document-state.js";
import type { Picture, PictureFinding, PictureWall } from "./picture.js";
import { isJoined, roomPicture } from "./room-picture.js";
import { MOST_DRAWN, simplifyScene } from "./simplify-scene.js";

/** What a preview shows of a document. */
export function buildPicture(state: DocumentState, withRoom: boolean): Picture {
  const { document, outcome, workspace } = state;
  const { solved, diagnostics } = outcome;
  const pieces = surfacesOf(solved.walls)
    .flatMap(({ lays }) => lays)
    .reduce((sum, lay) => sum + lay.pieces.count, 0);
  const simplified = pieces > MOST_DRAWN;
  const scene = simplified ? simplifyScene(outcome.scene()) : outcome.scene();
  const unfolds = isJoined(solved);
  const numbers = badgeNumbers(state);
  return {
    uri: document.uri,
    version: document.version,
    whole: isWhole(outcome),
    simplified,
    scene,
    unfolds,
    room: withRoom && unfolds ? roomPicture(solved, scene) : null,
    walls: solved.walls.map(({ wall }): PictureWall => ({
      name: wall.name,
      title: wall.title,
      counts: countsOf(diagnostics.filter((each) => each.wall === wall.name)),
    })),
    findings: diagnostics.map((diagnostic): PictureFinding => ({
      number: numbers.get(diagnostic) ?? null,
      code: diagnostic.code,
      severity: diagnostic.severity,
      message: diagnostic.message,
      source: diagnostic.source ?? null,
      allowed: diagnostic.allowed ?? null,
      wall: diagnostic.wall ?? null,
      pieces: diagnostic.pieces ?? [],
      place: { uri: workspace.uriOf(diagnostic.file), range: diagnostic.range },
    })),
    blocks: blocksOf(state),
  };
}

function badgeNumbers({ outcome }: DocumentState): ReadonlyMap<Diagnostic, string> {
  const walls = surfacesOf(outcome.solved.walls).map(({ wall }) => wall.name);
  const { groups } = findingGroups(walls, outcome.diagnostics);
  return new Map(
    groups.flatMap(({ number, findings }) => findings.map((finding) => [finding, number] as const)),
  );
}

/** Allowed findings are not counted. */
function countsOf(diagnostics: readonly Diagnostic[]): Record<Severity, number> {
  const counts = { error: 0, warning: 0, information: 0 };
  for (const { severity, allowed } of diagnostics) if (allowed === undefined) counts[severity]++;
  return counts;
}

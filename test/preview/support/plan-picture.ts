import { run, type Outcome } from "../../../src/engine.js";
import type { Source } from "../../../src/language/index.js";
import type { Origin, Severity } from "../../../src/model/index.js";
import type { Picture, PictureBlock, PictureFinding } from "../../../src/service/index.js";

/** A plan's picture for the tests of the preview. */
export function planPicture(text: string, source: Source, version: number, uri: string): Picture {
  const outcome = run(text, source);
  const scene = outcome.scene();
  const findings = findingsOf(outcome, uri);
  return {
    uri,
    version,
    whole: !outcome.diagnostics.some(({ code }) => code.startsWith("syntax/")),
    simplified: false,
    scene,
    walls: scene.walls.map(({ name, title }) => ({
      name,
      title,
      counts: countsOf(findings, name),
    })),
    findings,
    blocks: blocksOf(outcome, uri),
  };
}

function findingsOf({ diagnostics }: Outcome, uri: string): PictureFinding[] {
  const numbers = new Map<string, string>();
  return diagnostics.map((found) => {
    const key = JSON.stringify([found.wall, found.severity, found.code]);
    if (found.wall !== undefined && found.allowed === undefined && !numbers.has(key)) {
      numbers.set(key, String(numbers.size + 1));
    }
    return {
      number: found.allowed === undefined ? (numbers.get(key) ?? null) : null,
      code: found.code,
      severity: found.severity,
      message: found.message,
      source: found.source ?? null,
      allowed: found.allowed ?? null,
      wall: found.wall ?? null,
      pieces: found.pieces ?? [],
      place: { uri, range: found.range },
    };
  });
}

function countsOf(findings: readonly PictureFinding[], wall: string): Record<Severity, number> {
  const counts = { error: 0, warning: 0, information: 0 };
  for (const finding of findings) {
    if (finding.wall === wall && finding.allowed === null) counts[finding.severity] += 1;
  }
  return counts;
}

function blocksOf({ plan }: Outcome, uri: string): PictureBlock[] {
  const block = (
    kind: PictureBlock["kind"],
    wall: string,
    name: string,
    origin: Origin,
  ): PictureBlock => ({ kind, wall, name, place: { uri, range: origin.range } });
  return plan.walls.flatMap((wall) => [
    block("wall", wall.name, wall.name, wall.origin),
    ...(wall.lay ? [block("lay", wall.name, wall.lay.tile.name, wall.lay.origin)] : []),
    ...wall.openings.map((each) => block(each.kind, wall.name, each.name, each.origin)),
    ...wall.holes.map((each) => block("hole", wall.name, each.name, each.origin)),
    ...Object.values(wall.edges)
      .filter((edge) => edge.stated)
      .map((edge) => block("edge", wall.name, edge.side, edge.origin)),
  ]);
}

import { buildRoomScene, type WallScene } from "../drawing/index.js";
import { leftWords, type OptionCard, roomCards, wallCards } from "../sheets/index.js";
import { type RoomChoice, roomOptions, type SolvedPlan, type SolvedWall } from "../solver/index.js";
import type { DocumentState } from "./document-state.js";
import type { OptionGroup, PlanOption, PlanOptions } from "./plan-options.js";
import type { Turns } from "./workspace.js";
import { wallOptions } from "./wall-options.js";
import { writeOption } from "./write-option.js";
import { writeRoom } from "./write-room.js";

/** Of more walls than this the options are worked out only when one is asked for. */
const MOST_WALLS = 8;

/** Of more pieces than this no options are laid: nobody waits until all are laid several times. */
const MOST_PIECES = 20_000;

/**
 * The best few layouts: of a wall, or (`wall` null) of the room where its walls are laid together, else of
 * each wall. null when it was called off.
 */
export async function buildOptions(
  state: DocumentState,
  wall: string | null,
  turns: Turns,
): Promise<PlanOptions | null> {
  const { document, outcome } = state;
  const { solved } = outcome;
  const { uri, version } = document;
  if (wall === null && solved.room) {
    return { uri, version, wall, groups: [roomGroup(state, solved, solved.room)], more: 0 };
  }
  const asked = solved.walls.filter((each) => wall === null || each.wall.name === wall);
  const groups: OptionGroup[] = [];
  for (const each of asked.slice(0, MOST_WALLS)) {
    await turns.pause();
    if (turns.cancelled) return null;
    groups.push(wallGroup(state, solved, each));
  }
  return { uri, version, wall, groups, more: asked.length - groups.length };
}

function roomGroup(state: DocumentState, solved: SolvedPlan, room: RoomChoice): OptionGroup {
  const group = { wall: null, title: "The room", options: [] };
  if (piecesOf(solved.walls) > MOST_PIECES) return { ...group, note: TOO_MANY };
  const options = roomOptions(solved);
  const cards = roomCards(solved, options);
  const more = room.capped ? "; not all could be weighed: a better one may be left" : "";
  return {
    ...group,
    note: `Its walls are chosen together out of ${weighedWords(room.weighed)}${more}.`,
    options: options.map((option, i): PlanOption =>
      optionOf(cards[i]!, option.had, option.solved, writeRoom(state, option.solved)),
    ),
  };
}

function wallGroup(state: DocumentState, solved: SolvedPlan, wall: SolvedWall): OptionGroup {
  const { name, title } = wall.wall;
  const group = { wall: name, title: title || name, options: [] };
  if (piecesOf([wall]) > MOST_PIECES) return { ...group, note: TOO_MANY };
  const found = wallOptions(solved, wall);
  const [first] = wall.lays;
  if (!first) return { ...group, note: "No tile is laid on it." };
  if (!found) return { ...group, note: "Its courses are set: their start stays." };
  const cards = wallCards(solved, wall, found);
  const lay = wall.lays.length > 1 ? `The lay of ${first.lay.name} alone: ` : "";
  return {
    ...group,
    note: capital(`${lay}${leftWords(found)}.`),
    options: found.options.map((option, i): PlanOption => {
      const alone = { plan: solved.plan, walls: [option.wall] };
      return optionOf(cards[i]!, option.had, alone, writeOption(state, first, option));
    }),
  };
}

const TOO_MANY = `More than ${MOST_PIECES} pieces: too many to lay them several times.`;

function optionOf(
  card: OptionCard,
  had: boolean,
  solved: SolvedPlan,
  edits: PlanOption["edits"] | null,
): PlanOption {
  const walls = buildRoomScene(solved).walls.map(plainWall);
  return { ...card, had, walls, edits: edits ?? [] };
}

/** What a small picture shows of a wall: no words, and no lines over it. */
function plainWall(wall: WallScene): WallScene {
  return { ...wall, bands: [], hidden: [], lines: [], labels: [] };
}

function weighedWords(count: number): string {
  return count === 1 ? "one height and joint" : `${count} heights and joints`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function piecesOf(walls: readonly SolvedWall[]): number {
  return walls.flatMap(({ lays }) => lays).reduce((sum, { pieces }) => sum + pieces.count, 0);
}

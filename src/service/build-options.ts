import { buildRoomScene, type PieceGroup, type WallScene } from "../drawing/index.js";
import { leftWords, type OptionCard, roomCards, wallCards } from "../sheets/index.js";
import {
  type RoomChoice,
  roomOptions,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  startedLays,
} from "../solver/index.js";
import type { DocumentState } from "./document-state.js";
import type { OptionGroup, PlanOption, PlanOptions } from "./plan-options.js";
import type { Turns } from "./workspace.js";
import { ownStart } from "./own-start.js";
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
    const started = startedLays(each);
    // A wall without any says why.
    for (const laid of started.length > 0 ? started : [undefined]) {
      await turns.pause();
      if (turns.cancelled) return null;
      groups.push(wallGroup(state, solved, each, laid));
    }
  }
  return { uri, version, wall, groups, more: Math.max(0, asked.length - MOST_WALLS) };
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

function wallGroup(
  state: DocumentState,
  solved: SolvedPlan,
  wall: SolvedWall,
  laid: SolvedLay | undefined,
): OptionGroup {
  const { name, title } = wall.wall;
  const lay = laid && wall.lays.length > 1 ? `, the lay of ${laid.lay.name}` : "";
  const group = { wall: name, title: `${title || name}${lay}`, options: [] };
  if (piecesOf([wall]) > MOST_PIECES) return { ...group, note: TOO_MANY };
  if (wall.lays.length === 0) return { ...group, note: "No tile is laid on it." };
  const found = laid ? wallOptions(solved, wall, laid) : null;
  if (!laid || !found) return { ...group, note: "Its courses are set: their start stays." };
  const cards = wallCards(solved, wall, found);
  return {
    ...group,
    note: capital(`${leftWords(found)}.`),
    options: found.options.map((option, i): PlanOption => {
      const alone = { plan: solved.plan, walls: [option.wall] };
      const start = option.had ? ownStart(wall, laid) : option;
      return {
        ...optionOf(cards[i]!, option.had, alone, writeOption(state, laid, start)),
        beside: besideLay(solved, option.wall, option.lay),
      };
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
  return { ...card, had, walls, beside: [], edits: edits ?? [] };
}

/** The tile of a wall's lays of other blocks. */
function besideLay(solved: SolvedPlan, wall: SolvedWall, lay: SolvedLay): readonly PieceGroup[] {
  const lays = wall.lays.filter((each) => each.lay.origin !== lay.lay.origin);
  const others = { plan: solved.plan, walls: [{ ...wall, lays }] };
  return lays.length === 0 ? [] : buildRoomScene(others).walls[0]!.pieces;
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

import * as vscode from "vscode";
import { type BaseLanguageClient, State } from "vscode-languageclient";
import * as protocol from "../server/protocol.js";
import type {
  ComparisonLook,
  Picture,
  PictureChanges,
  PlanComparison,
  SpotQuestion,
  SpotReading,
} from "../service/index.js";

/** A plan that is watched. */
export interface Watch {
  /** Has the changed pieces told with each picture, against an old text; null for none. */
  mark(old: protocol.OldText | null): void;
  /** Has each picture hold the room unfolded as well, or no longer. */
  unfold(room: boolean): void;
  dispose(): void;
}

/** What a watch wants of each picture. */
interface Wanted {
  readonly marks: protocol.OldText | null;
  readonly room: boolean;
}

/** A comparison that is watched. */
export interface ComparisonWatch {
  show(old: protocol.OldText | null, look: ComparisonLook): void;
  dispose(): void;
}

/** The language server as the previews use it: pictures of watched plans, what changed, and readings. */
export class PlanServer implements vscode.Disposable {
  readonly #pictures = new vscode.EventEmitter<Picture>();
  readonly #changes = new vscode.EventEmitter<PictureChanges>();
  readonly #running = new vscode.EventEmitter<void>();
  /** Those who watch each plan, and what each wants. */
  readonly #watches = new Map<string, Map<Watch, Wanted>>();
  readonly #lastCommits = new Map<string, protocol.LastCommit>();
  readonly #comparisons = new Map<number, protocol.WatchComparison>();
  readonly #tellComparison = new Map<number, (comparison: PlanComparison) => void>();
  readonly #subscriptions: readonly { dispose(): unknown }[];
  #comparisonsBegun = 0;

  readonly onPicture = this.#pictures.event;
  readonly onChanges = this.#changes.event;
  /** The server runs, for the first time or again. */
  readonly onRunning = this.#running.event;

  constructor(private readonly client: BaseLanguageClient) {
    this.#subscriptions = [
      this.#pictures,
      this.#changes,
      this.#running,
      client.onNotification(protocol.PICTURE, (picture: protocol.PictureNotice) =>
        this.#pictures.fire(picture),
      ),
      client.onNotification(protocol.CHANGES, (changes: protocol.ChangesNotice) =>
        this.#changes.fire(changes),
      ),
      client.onNotification(protocol.COMPARISON, ({ id, comparison }: protocol.ComparisonNotice) =>
        this.#tellComparison.get(id)?.(comparison),
      ),
      client.onDidChangeState(({ newState }) => {
        if (newState !== State.Running) return;
        this.#sendAll();
        this.#running.fire();
      }),
    ];
  }

  /** Has pictures of a plan sent, until it is disposed, at first with these marks. */
  watch(uri: string, { marks, room }: Wanted): Watch {
    const watches = this.#watches.get(uri) ?? new Map<Watch, Wanted>();
    const isFirst = watches.size === 0;
    this.#watches.set(uri, watches);
    const change = (changed: () => void): void => {
      const before = wantedOf(watches);
      changed();
      const after = wantedOf(watches);
      if (before.marks !== after.marks || before.room !== after.room) this.#sendWatch(uri);
    };
    const want = (wanted: Partial<Wanted>): void => {
      change(() => watches.set(watch, { ...watches.get(watch)!, ...wanted }));
    };
    const watch: Watch = {
      mark: (old) => want({ marks: old }),
      unfold: (unfolded) => want({ room: unfolded }),
      dispose: () => {
        if (!watches.has(watch)) return;
        if (watches.size > 1) {
          change(() => watches.delete(watch));
          return;
        }
        watches.delete(watch);
        this.#watches.delete(uri);
        this.#sendWatch(uri);
      },
    };
    if (isFirst) {
      watches.set(watch, { marks, room });
      this.#sendWatch(uri);
    } else change(() => watches.set(watch, { marks, room }));
    return watch;
  }

  /** Has a comparison told, of a plan with what it is shown against. */
  watchComparison(uri: string, tell: (comparison: PlanComparison) => void): ComparisonWatch {
    const id = ++this.#comparisonsBegun;
    this.#tellComparison.set(id, tell);
    const none: ComparisonLook = { way: "sides", wall: null };
    const show: ComparisonWatch["show"] = (old, look) => {
      const watched = { id, uri, old, look };
      if (old) this.#comparisons.set(id, watched);
      else this.#comparisons.delete(id);
      this.#send(protocol.WATCH_COMPARISON, watched);
    };
    return {
      show,
      dispose: () => {
        this.#tellComparison.delete(id);
        show(null, none);
      },
    };
  }

  /** Tells a plan's text in the last commit, for lenses. */
  setLastCommit(uri: string, old: protocol.OldText | null): void {
    const last = { uri, old };
    if (old) this.#lastCommits.set(uri, last);
    else this.#lastCommits.delete(uri);
    this.#send(protocol.LAST_COMMIT, last);
  }

  /** What stands at a spot of a wall; null when nothing does, or the server can't say. */
  async spot(question: SpotQuestion): Promise<SpotReading | null> {
    try {
      return await this.client.sendRequest<protocol.SpotAnswer>(protocol.SPOT, question);
    } catch (error) {
      this.client.warn("A spot of the picture could not be read", error, false);
      return null;
    }
  }

  /** The best few layouts of a wall, or of all of a plan; null when it isn't open, or the server can't say. */
  async options(
    asked: protocol.OptionsRequest,
    token: vscode.CancellationToken,
  ): Promise<protocol.OptionsAnswer> {
    if (this.client.state !== State.Running) return null;
    try {
      return await this.client.sendRequest<protocol.OptionsAnswer>(protocol.OPTIONS, asked, token);
    } catch (error) {
      // A newer text came meanwhile, or another wall was chosen: it is asked for in its turn.
      this.client.warn("The layouts of a plan could not be told", error, false);
      return null;
    }
  }

  /** The sheet of a plan as it is written now; null when it isn't open, or the server can't say. */
  async sheet(asked: protocol.SheetRequest): Promise<protocol.SheetAnswer | null> {
    if (this.client.state !== State.Running) return null;
    try {
      return await this.client.sendRequest<protocol.SheetAnswer | null>(protocol.SHEET, asked);
    } catch (error) {
      // A newer text came meanwhile, and is asked for in its turn.
      this.client.warn("A sheet could not be made", error, false);
      return null;
    }
  }

  /** The sheet in a format. Rejects when it can't be printed. */
  async printSheet(asked: protocol.PrintSheet): Promise<readonly protocol.PrintedFile[] | null> {
    return this.client.sendRequest<protocol.PrintedFile[] | null>(protocol.PRINT_SHEET, asked);
  }

  async restart(): Promise<void> {
    await this.client.stop();
    await this.client.start();
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  /** A server that begins anew knows nothing. */
  #sendAll(): void {
    for (const uri of this.#watches.keys()) this.#sendWatch(uri);
    for (const last of this.#lastCommits.values()) this.#send(protocol.LAST_COMMIT, last);
    for (const each of this.#comparisons.values()) this.#send(protocol.WATCH_COMPARISON, each);
  }

  #sendWatch(uri: string): void {
    const watches = this.#watches.get(uri);
    const wanted = wantedOf(watches ?? new Map<Watch, Wanted>());
    const notice: protocol.WatchPicture = { uri, watching: watches !== undefined, ...wanted };
    this.#send(protocol.WATCH_PICTURE, notice);
  }

  #send(method: string, notice: object): void {
    // Until the server runs, all that is watched waits for it: see onDidChangeState.
    if (this.client.state !== State.Running) return;
    this.client.sendNotification(method, notice).catch((error: unknown) => {
      this.client.warn("The server could not be told what is shown", error, false);
    });
  }
}

/** Where several previews of a plan want marks, they want them against the same. */
function wantedOf(watches: ReadonlyMap<Watch, Wanted>): Wanted {
  const all = [...watches.values()];
  const marks = all.map((wanted) => wanted.marks).find((old) => old !== null) ?? null;
  return { marks, room: all.some(({ room }) => room) };
}

import * as vscode from "vscode";
import { type BaseLanguageClient, State } from "vscode-languageclient";
import * as protocol from "../server/protocol.js";
import type { Picture, SpotQuestion, SpotReading } from "../service/index.js";

/** The language server as the previews use it: pictures of watched plans, and readings. */
export class PlanServer implements vscode.Disposable {
  readonly #pictures = new vscode.EventEmitter<Picture>();
  /** How many watch each plan. */
  readonly #watched = new Map<string, number>();
  readonly #subscriptions: readonly { dispose(): unknown }[];

  readonly onPicture = this.#pictures.event;

  constructor(private readonly client: BaseLanguageClient) {
    this.#subscriptions = [
      this.#pictures,
      client.onNotification(protocol.PICTURE, (picture: protocol.PictureNotice) =>
        this.#pictures.fire(picture),
      ),
      client.onDidChangeState(({ newState }) => {
        // A server that begins anew knows nothing of what is watched.
        if (newState === State.Running)
          for (const uri of this.#watched.keys()) this.#send(uri, true);
      }),
    ];
  }

  /** Has pictures of a plan sent, until it is disposed. */
  watch(uri: string): vscode.Disposable {
    const watchers = this.#watched.get(uri) ?? 0;
    this.#watched.set(uri, watchers + 1);
    if (watchers === 0) this.#send(uri, true);
    return new vscode.Disposable(() => this.#unwatch(uri));
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

  async restart(): Promise<void> {
    await this.client.stop();
    await this.client.start();
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  #unwatch(uri: string): void {
    const watchers = this.#watched.get(uri)! - 1;
    if (watchers > 0) {
      this.#watched.set(uri, watchers);
      return;
    }
    this.#watched.delete(uri);
    this.#send(uri, false);
  }

  #send(uri: string, watching: boolean): void {
    // Until the server runs, the watched plans wait for it: see onDidChangeState.
    if (this.client.state !== State.Running) return;
    const notice: protocol.WatchPicture = { uri, watching };
    this.client.sendNotification(protocol.WATCH_PICTURE, notice).catch((error: unknown) => {
      this.client.warn("The server could not be told of a preview", error, false);
    });
  }
}

import { buildSync } from "esbuild";
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import process from "node:process";
import {
  createProtocolConnection,
  type Diagnostic,
  type InitializeParams,
  type InitializeResult,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import { DEFAULT_SETTINGS, type ServerSettings } from "../../src/server/protocol.js";

/** The server's program, bundled once as the build does it. */
let program: string | undefined;

function bundledServer(): string {
  if (program !== undefined) return program;
  const outfile = path.join(mkdtempSync(path.join(tmpdir(), "gaugelath-")), "server.cjs");
  buildSync({
    entryPoints: ["src/server/server.node.ts"],
    bundle: true,
    platform: "node",
    format: "cjs",
    target: "node20",
    outfile,
    logLevel: "warning",
  });
  return (program = outfile);
}

/** How a test's client differs from a plain one. */
export interface ClientOptions {
  readonly settings?: Partial<ServerSettings>;
  readonly words?: readonly string[];
}

/** A protocol client of a server in a process of its own, over stdio. */
export class TestClient {
  readonly connection: ProtocolConnection;
  readonly published: PublishDiagnosticsParams[] = [];
  readonly process: ChildProcess;
  #settings: ServerSettings;
  #waiting: { wanted: (told: PublishDiagnosticsParams) => boolean; tell: () => void }[] = [];

  constructor({ settings = {}, words = [bundledServer(), "--stdio"] }: ClientOptions = {}) {
    this.#settings = { ...DEFAULT_SETTINGS, debounce: 0, ...settings };
    this.process = spawn(process.execPath, words, { stdio: ["pipe", "pipe", "inherit"] });
    this.connection = createProtocolConnection(
      new StreamMessageReader(this.process.stdout!),
      new StreamMessageWriter(this.process.stdin!),
    );
    this.connection.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) =>
      items.map(() => this.#settings),
    );
    this.connection.onRequest("client/registerCapability", () => null);
    this.connection.onRequest("workspace/inlayHint/refresh", () => null);
    this.connection.onNotification(
      "textDocument/publishDiagnostics",
      (told: PublishDiagnosticsParams) => {
        this.published.push(told);
        for (const { wanted, tell } of this.#waiting) if (wanted(told)) tell();
      },
    );
    this.connection.listen();
  }

  async start(folder?: string): Promise<InitializeResult> {
    const params: Omit<InitializeParams, "rootUri"> = {
      processId: process.pid,
      capabilities: {
        workspace: {
          configuration: true,
          didChangeConfiguration: { dynamicRegistration: true },
          didChangeWatchedFiles: { dynamicRegistration: true },
          workspaceFolders: true,
        },
      },
      workspaceFolders: folder === undefined ? null : [{ uri: folder, name: "test" }],
    };
    const result = await this.connection.sendRequest<InitializeResult>("initialize", params);
    await this.connection.sendNotification("initialized", {});
    return result;
  }

  async configure(settings: Partial<ServerSettings>): Promise<void> {
    this.#settings = { ...this.#settings, ...settings };
    await this.connection.sendNotification("workspace/didChangeConfiguration", { settings: null });
  }

  async open(uri: string, text: string, version = 1): Promise<void> {
    const textDocument = { uri, languageId: "tileplan", version, text };
    await this.connection.sendNotification("textDocument/didOpen", { textDocument });
  }

  /** Replaces the whole text, or makes the changes given. */
  async change(uri: string, version: number, ...contentChanges: unknown[]): Promise<void> {
    const changes = contentChanges.map((change) =>
      typeof change === "string" ? { text: change } : change,
    );
    const textDocument = { uri, version };
    const params = { textDocument, contentChanges: changes };
    await this.connection.sendNotification("textDocument/didChange", params);
  }

  async close(uri: string): Promise<void> {
    await this.connection.sendNotification("textDocument/didClose", { textDocument: { uri } });
  }

  /** The diagnostics of a version, as soon as they are published. */
  async diagnostics(uri: string, version: number): Promise<Diagnostic[]> {
    const wanted = (told: PublishDiagnosticsParams): boolean =>
      told.uri === uri && told.version === version;
    return (await this.until(wanted)).diagnostics;
  }

  /** What is published that fits, now or before. */
  async until(
    wanted: (told: PublishDiagnosticsParams) => boolean,
  ): Promise<PublishDiagnosticsParams> {
    if (!this.published.some(wanted)) {
      await new Promise<void>((tell) => this.#waiting.push({ wanted, tell }));
      this.#waiting = this.#waiting.filter((each) => each.wanted !== wanted);
    }
    return this.published.filter(wanted).at(-1)!;
  }

  request<Result>(method: string, params: unknown): Promise<Result> {
    return this.connection.sendRequest<Result>(method, params);
  }

  /** Ends the server as an editor does; gives its exit code. */
  async stop(): Promise<number | null> {
    const exited = once(this.process, "exit");
    await this.connection.sendRequest("shutdown");
    await this.connection.sendNotification("exit");
    const [code] = (await exited) as [number | null];
    this.connection.dispose();
    return code;
  }
}

import { type Connection, DidChangeConfigurationNotification } from "vscode-languageserver";
import { DEFAULT_SETTINGS, type ServerSettings, SETTINGS_SECTION } from "./protocol.js";

/** The longest wait that a setting may ask for, in milliseconds. */
const LONGEST_DEBOUNCE = 2_000;

/** The client's settings, asked for once for each document and again when they change. */
export class Settings {
  readonly #known = new Map<string, Promise<ServerSettings>>();

  constructor(
    private readonly connection: Connection,
    /** Whether the client answers workspace/configuration. */
    private readonly canAsk: () => boolean,
  ) {}

  of(uri: string): Promise<ServerSettings> {
    if (!this.canAsk()) return Promise.resolve(DEFAULT_SETTINGS);
    const known = this.#known.get(uri) ?? this.#ask(uri);
    this.#known.set(uri, known);
    return known;
  }

  forget(uri?: string): void {
    if (uri === undefined) this.#known.clear();
    else this.#known.delete(uri);
  }

  async listen(): Promise<void> {
    await this.connection.client.register(DidChangeConfigurationNotification.type, {
      section: SETTINGS_SECTION,
    });
  }

  async #ask(scopeUri: string): Promise<ServerSettings> {
    try {
      const told: unknown = await this.connection.workspace.getConfiguration({
        scopeUri,
        section: SETTINGS_SECTION,
      });
      return readSettings(told);
    } catch {
      return DEFAULT_SETTINGS;
    }
  }
}

/** Settings as far as they are what they should be; the default stands for any that is not. */
export function readSettings(told: unknown): ServerSettings {
  const given: Readonly<Record<string, unknown>> =
    typeof told === "object" && told !== null ? { ...told } : {};
  const { units, hints, changes, debounce } = given;
  return {
    units: units === "inch" || units === "mm" ? units : DEFAULT_SETTINGS.units,
    hints: typeof hints === "boolean" ? hints : DEFAULT_SETTINGS.hints,
    changes: typeof changes === "boolean" ? changes : DEFAULT_SETTINGS.changes,
    debounce:
      typeof debounce === "number" && debounce >= 0
        ? Math.min(debounce, LONGEST_DEBOUNCE)
        : DEFAULT_SETTINGS.debounce,
  };
}

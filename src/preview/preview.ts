/// <reference lib="dom" />
import type { Place } from "../drawing/index.js";
import type { Cursor, DocumentPlace, Picture, PictureFinding } from "../service/index.js";
import { boxToFit, placeOfFinding } from "./box-to-fit.js";
import { ChangeCard } from "./change-card.js";
import { closeMenus } from "./close-menus.js";
import { make } from "./elements.js";
import { pngOfSeen, svgOfSeen } from "./export-picture.js";
import { blockAt, outlineOf } from "./find-block.js";
import { FindingsList } from "./findings-list.js";
import { connectHost, type EditorPage, type Host } from "./host.js";
import { keepView, readKeptView, type KeptView } from "./kept-view.js";
import { actOfKey, type KeyAct, lookBy } from "./key-acts.js";
import { applyLayers, LayerSwitches } from "./layers.js";
import type { ExportFormat, ToldChanges, ToPreview } from "./messages.js";
import { watchPointer } from "./pan-zoom.js";
import { OptionsDesk } from "./options/options-desk.js";
import { Pointing } from "./pointing.js";
import { ReadingCard, spokenReading } from "./reading-card.js";
import { RoomView } from "./room-view.js";
import { NOTHING, noteOf, withPicture, type Shown } from "./shown.js";
import { Sight } from "./sight.js";
import { Stage } from "./stage.js";
import { Toolbar } from "./toolbar.js";
import { nearestWall } from "./view.js";
import { WallStrip } from "./wall-strip.js";

/** Milliseconds of rest before the view is kept for a reload. */
const KEEP_AFTER = 150;

const STAGE_HELP =
  "Arrow keys move the picture, plus and minus zoom, 0 fits it, 1 shows its actual size, W its " +
  "width. P walks from piece to piece: arrow keys step, Page Up and Page Down change the wall, Enter goes to " +
  "the line, Escape ends.";

/** The preview: one plan's picture, and what is said about it. Its page is built once. */
export class Preview {
  readonly #host: Host;
  readonly #stage = new Stage();
  readonly #card = new ReadingCard();
  readonly #changes = new ChangeCard(() => this.#host.send({ type: "compare" }));
  readonly #spoken = make("div", { class: "unseen", role: "log", "aria-live": "polite" });
  readonly #title = make("h1", { class: "unseen" }, "Plan preview");
  readonly #note = make("p", { class: "note", role: "status" });
  readonly #strip = new WallStrip((wall) => this.#chooseWall(wall));
  readonly #findings = new FindingsList((finding) => this.#goToFinding(finding));
  readonly #options = new OptionsDesk({
    ask: (wall) => this.#uri !== null && this.#host.send({ type: "options", uri: this.#uri, wall }),
    take: (taken) => this.#host.send({ type: "take", ...taken }),
  });
  readonly #room = new RoomView();
  readonly #layers = new LayerSwitches(() => this.#changeLayers());
  readonly #toolbar: Toolbar;
  readonly #sight = new Sight(
    this.#stage,
    (scene) => boxToFit(scene, this.#wall, this.#layers.off),
    ({ scale }) => {
      this.#toolbar.scale = scale;
      this.#keepSoon();
    },
  );
  readonly #pointing: Pointing;
  /** What was kept for each plan that this preview has shown. */
  readonly #kept = new Map<string, KeptView>();
  #uri: string | null = null;
  #pinned = false;
  #marked = true;
  #shown: Shown = NOTHING;
  /** What was shown when the page was last changed. */
  #painted: Shown = NOTHING;
  #onStage: Picture | null = null;
  #wall: string | null = null;
  #cursor: Cursor | null = null;
  #frame = 0;
  #keeping: ReturnType<typeof setTimeout> | undefined;

  constructor(page: HTMLElement, editor: EditorPage) {
    this.#toolbar = new Toolbar(
      {
        fit: () => this.#sight.fit("whole"),
        width: () => this.#sight.fit("width"),
        actual: () => this.#sight.actualSize(),
        zoom: (factor) => this.#sight.zoom(factor),
        export: (format) => void this.#export(format),
        pin: (pinned) => this.#pin(pinned),
        mark: (marked) => this.#mark(marked),
        room: (shown) => this.#unfold(shown),
        options: (shown) => this.#showOptions(shown),
      },
      this.#layers.element,
    );
    this.#pointing = new Pointing({
      ask: (id, question) => this.#host.send({ type: "spot", id, question }),
      select: ({ place }) => this.#select(place),
      selectFinding: (finding) => this.#goToFinding(finding),
      mark: (name, at, rings) => this.#stage.mark(name, { at, rings }),
      unmark: (name) => this.#stage.mark(name, null),
      showReading: (reading) => this.#card.show(reading),
      showFinding: (finding) => this.#card.showFinding(finding),
      speak: (reading) => (this.#spoken.textContent = spokenReading(reading)),
    });
    this.#host = connectHost(editor, (message) => this.#listen(message));
    this.#buildPage(page);
    this.#recall();
    this.#host.send({ type: "ready" });
  }

  #buildPage(page: HTMLElement): void {
    const help = make("p", { class: "unseen", id: "stage-help" }, STAGE_HELP);
    const { element } = this.#stage;
    element.setAttribute("role", "application");
    element.setAttribute("aria-label", "Picture of the plan");
    element.setAttribute("aria-describedby", "stage-help");
    element.append(this.#changes.element, this.#card.element);
    this.#note.hidden = true;
    const desk = make("div", { class: "desk" }, element, this.#findings.element);
    const main = make(
      "main",
      {},
      ...[this.#title, this.#strip.element, this.#note, this.#options.element, desk, help],
    );
    page.append(this.#toolbar.element, main, this.#spoken);
    closeMenus(page);
    watchPointer(element, {
      panBy: (dx, dy) => this.#sight.panBy(dx, dy),
      zoomAt: (at, factor) => this.#sight.zoom(factor, at),
      pointAt: (at) => this.#pointAt(at),
      tap: (at) => {
        const place = this.#sight.placeUnder(at);
        if (place) this.#pointing.tap(place);
      },
    });
    element.addEventListener("keydown", (event) => this.#key(event));
    element.addEventListener("blur", () => this.#pointing.stopWalking());
    new ResizeObserver(() => this.#sight.settle()).observe(element);
  }

  #recall(): void {
    const state = this.#host.recall();
    const kept = readKeptView(state?.view);
    if (!state || !kept) return;
    this.#kept.set(state.uri, kept);
    this.#usePlan(state.uri);
    this.#pinned = state.pinned;
    this.#toolbar.pinned = state.pinned;
    this.#marked = state.marked ?? true;
    this.#toolbar.marked = this.#marked;
    if (state.room) this.#unfold(true);
  }

  #listen(message: ToPreview): void {
    switch (message.type) {
      case "plan":
        this.#usePlan(message.uri);
        this.#title.textContent = message.name;
        this.#stage.element.setAttribute("aria-label", `Picture of ${message.name}`);
        this.#pinned = message.pinned;
        this.#toolbar.pinned = message.pinned;
        this.#marked = message.marked;
        this.#toolbar.marked = message.marked;
        this.#keepSoon();
        return;
      case "picture":
        if (message.picture.uri === this.#uri)
          this.#show(withPicture(this.#shown, message.picture));
        return;
      case "changes":
        if (message.uri === this.#uri) this.#showChanges(message.told);
        return;
      case "gone":
        if (message.uri === this.#uri) this.#show({ ...this.#shown, gone: message.message });
        return;
      case "cursor":
        this.#cursor = message.cursor;
        this.#markCursor();
        return;
      case "options":
        if (message.options.uri === this.#uri) this.#options.answer(message.options);
        return;
      case "spot":
        this.#pointing.answer(message.id, message.reading);
        return;
      case "export":
        void this.#export(message.format);
        return;
    }
  }

  /** Another plan begins on an empty stage, as it was left when it was shown before. */
  #usePlan(uri: string): void {
    if (uri === this.#uri) return;
    this.#keepNow();
    this.#uri = uri;
    this.#shown = NOTHING;
    this.#onStage = null;
    const kept = this.#kept.get(uri);
    this.#wall = kept?.wall ?? null;
    this.#layers.off = kept?.off ?? this.#layers.off;
    applyLayers(this.#stage.element, this.#layers.off);
    this.#sight.clear();
    this.#options.clear(this.#wall);
    this.#showChanges(null);
    this.#pointing.drawn(null, []);
    this.#show(NOTHING);
  }

  /**
   * Drawn at once, so that it makes the next frame. Of pictures that come faster than frames, the
   * newest alone is drawn.
   */
  #show(shown: Shown): void {
    this.#shown = shown;
    if (this.#frame !== 0) return;
    this.#paint();
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      if (this.#shown !== this.#painted) this.#paint();
      // By then the frame is on the screen.
      setTimeout(() => this.#afterFrame());
    });
  }

  #paint(): void {
    this.#painted = this.#shown;
    const { latest } = this.#shown;
    const drawn = this.#shown.drawn && this.#room.seen(this.#shown.drawn);
    this.#toolbar.unfolds = latest?.unfolds === true;
    // What stands round the picture comes first: it takes its room.
    const note = noteOf(this.#shown);
    this.#note.hidden = note === null;
    this.#note.textContent = note ?? "";
    const titles = new Map(latest?.walls.map((wall) => [wall.name, wall.title]));
    this.#findings.show(latest?.findings ?? [], titles);
    if (drawn && !this.#onStage) this.#strip.show(drawn.scene, drawn.walls, this.#wall);
    if (drawn && drawn !== this.#onStage) this.#draw(drawn);
    this.#markCursor();
  }

  /** What can wait until the picture is seen. */
  #afterFrame(): void {
    const { latest } = this.#painted;
    if (!latest) return;
    const { uri, version } = latest;
    this.#host.send({ type: "painted", uri, version });
    this.#options.painted(version);
    if (this.#onStage) this.#strip.show(this.#onStage.scene, latest.walls, this.#wall);
  }

  #draw(picture: Picture): void {
    const { scene } = picture;
    if (!scene.walls.some((wall) => wall.name === this.#wall)) this.#wall = null;
    this.#options.wall = this.#wall;
    this.#onStage = picture;
    this.#sight.show(scene, this.#kept.get(picture.uri) ?? null);
    this.#stage.mark("finding", null);
    this.#pointing.drawn(picture, this.#shown.latest?.findings ?? []);
  }

  #showChanges(told: ToldChanges | null): void {
    this.#changes.show(told);
    this.#stage.changes.show(told?.changes ?? null);
    this.#stage.changes.place(this.#sight.scene);
  }

  #chooseWall(wall: string | null): void {
    this.#wall = wall;
    this.#strip.choice = wall;
    this.#options.wall = wall;
    this.#sight.fit("whole");
  }

  #changeLayers(): void {
    applyLayers(this.#stage.element, this.#layers.off);
    this.#sight.settle();
    this.#keepSoon();
  }

  #pointAt(at: Place | null): void {
    this.#pointing.pointAt(at && this.#sight.placeUnder(at));
    const place = at && this.#sight.placeUnder(at);
    if (place) this.#card.keepFrom(this.#sight.shareOfRoom({ left: place.x, bottom: place.y }));
  }

  #key(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = actOfKey(event.key, event.shiftKey, this.#pointing.walking);
    if (!act) return;
    event.preventDefault();
    this.#do(act);
  }

  #do(act: KeyAct): void {
    if (lookBy(act, this.#sight)) return;
    switch (act.act) {
      case "walk":
        this.#startWalking();
        break;
      case "step":
        this.#pointing.step(act.step);
        this.#keepWalkSeen();
        break;
      case "wall":
        this.#pointing.stepWall(act.by);
        this.#keepWalkSeen();
        break;
      case "stop":
        this.#pointing.stopWalking();
        break;
      case "select":
        this.#pointing.select();
        break;
    }
  }

  #startWalking(): void {
    const { scene, view } = this.#sight;
    if (!scene || !view) return;
    const chosen = scene.walls.find((wall) => wall.name === this.#wall);
    const wall = chosen ?? nearestWall(scene.walls, view);
    if (wall) this.#pointing.startWalking(wall, view);
    this.#keepWalkSeen();
  }

  #keepWalkSeen(): void {
    const over = this.#pointing.walkedOver;
    if (!over) return;
    this.#sight.bringIn(over);
    this.#card.keepFrom(this.#sight.shareOfRoom(over));
  }

  #markCursor(): void {
    const picture = this.#shown.latest;
    const block = picture && blockAt(picture, this.#cursor);
    const outline = block && this.#onStage && outlineOf(this.#onStage.scene, block);
    this.#stage.mark("cursor", outline ? { at: outline.wall.at, rings: outline.rings } : null);
  }

  #goToFinding(finding: PictureFinding): void {
    this.#select(finding.place);
    this.#findings.point(finding.number);
    const { scene } = this.#sight;
    const place = scene && placeOfFinding(scene, finding.wall, finding.pieces);
    this.#stage.mark("finding", place);
    if (place) this.#sight.bringNear(place.box);
  }

  #select({ uri, range }: DocumentPlace): void {
    this.#host.send({ type: "select", uri, range });
  }

  #pin(pinned: boolean): void {
    this.#pinned = pinned;
    this.#toolbar.pinned = pinned;
    this.#host.send({ type: "pin", pinned });
    this.#keepSoon();
  }

  /** Shows the room unfolded, or its walls as they are; the room comes with the next picture. */
  #unfold(shown: boolean): void {
    this.#room.isOn = shown;
    this.#toolbar.unfolded = shown;
    this.#host.send({ type: "room", shown });
    if (this.#shown.drawn) this.#paint();
    this.#keepSoon();
  }

  #showOptions(shown: boolean): void {
    this.#toolbar.optionsShown = shown;
    this.#options.turn(shown);
  }

  #mark(marked: boolean): void {
    this.#marked = marked;
    this.#toolbar.marked = marked;
    this.#host.send({ type: "mark", marked });
    if (!marked) this.#showChanges(null);
    this.#keepSoon();
  }

  async #export(format: ExportFormat): Promise<void> {
    const { drawn, room } = this.#stage;
    if (!drawn) return;
    try {
      const svg = svgOfSeen(drawn, room);
      const data = format === "svg" ? svg : await pngOfSeen(svg, room);
      this.#host.send({ type: "exported", format, data });
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      this.#host.send({ type: "fault", message: `The picture could not be saved: ${reason}` });
    }
  }

  #keepSoon(): void {
    clearTimeout(this.#keeping);
    this.#keeping = setTimeout(() => this.#keepNow(), KEEP_AFTER);
  }

  #keepNow(): void {
    clearTimeout(this.#keeping);
    if (this.#uri === null) return;
    const { scene, view: seen } = this.#sight;
    if (scene && seen) {
      this.#kept.set(this.#uri, keepView(seen, scene, this.#wall, this.#layers.off));
    }
    const view = this.#kept.get(this.#uri);
    const [pinned, marked, room] = [this.#pinned, this.#marked, this.#room.isOn];
    this.#host.keep({ uri: this.#uri, pinned, marked, room, ...(view && { view }) });
  }
}

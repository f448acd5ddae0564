/// <reference lib="dom" />
import type { PictureBox, Place } from "../drawing/index.js";
import type { Cursor, DocumentPlace, Picture, PictureFinding } from "../service/index.js";
import { boxToFit, placeOfFinding } from "./box-to-fit.js";
import { ChangeCard } from "./change-card.js";
import { exportSeen } from "./export-picture.js";
import { blockAt, outlineOf } from "./find-block.js";
import { FindingsList } from "./findings-list.js";
import { connectHost, type EditorPage, type Host } from "./host.js";
import { keepView } from "./kept-view.js";
import { KeptViews, type Standing } from "./kept-views.js";
import { applyLayers, LayerSwitches } from "./layers.js";
import type { ExportFormat, ToldChanges, ToPreview } from "./messages.js";
import { NewestFrame } from "./newest-frame.js";
import { OptionsDesk } from "./options/options-desk.js";
import { watchPointer } from "./pan-zoom.js";
import { PictureKeys } from "./picture-keys.js";
import { Pointing } from "./pointing.js";
import { PreviewPage } from "./preview-page.js";
import { ReadingCard, spokenReading } from "./reading-card.js";
import { RoomView } from "./room-view.js";
import { NOTHING, noteOf, withPicture, type Shown } from "./shown.js";
import { Sight } from "./sight.js";
import { Stage } from "./stage.js";
import { Toolbar } from "./toolbar.js";
import { WallStrip } from "./wall-strip.js";

/** The preview: one plan's picture, and what is said about it. Its page is built once. */
export class Preview {
  readonly #host: Host;
  readonly #stage = new Stage();
  readonly #card = new ReadingCard();
  readonly #changes = new ChangeCard(() => this.#host.send({ type: "compare" }));
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
      this.#kept.soon();
    },
  );
  readonly #pointing: Pointing;
  readonly #keys: PictureKeys;
  readonly #page: PreviewPage;
  readonly #kept: KeptViews;
  readonly #frames = new NewestFrame<Shown>(
    NOTHING,
    (shown) => this.#paint(shown),
    () => this.#afterFrame(),
  );
  #uri: string | null = null;
  #pinned = false;
  #marked = true;
  #onStage: Picture | null = null;
  #wall: string | null = null;
  #cursor: Cursor | null = null;

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
      speak: (reading) => this.#page.speak(spokenReading(reading)),
    });
    this.#keys = new PictureKeys(
      this.#sight,
      this.#pointing,
      () => this.#wall,
      (over) => this.#keepCardFrom(over),
    );
    this.#page = new PreviewPage(page, {
      toolbar: this.#toolbar.element,
      strip: this.#strip.element,
      options: this.#options.element,
      stage: this.#stage.element,
      cards: [this.#changes.element, this.#card.element],
      findings: this.#findings.element,
    });
    this.#host = connectHost(editor, (message) => this.#listen(message));
    this.#kept = new KeptViews(this.#host, () => this.#standing());
    this.#watchStage();
    this.#recall();
    this.#host.send({ type: "ready" });
  }

  #watchStage(): void {
    const { element } = this.#stage;
    watchPointer(element, {
      panBy: (dx, dy) => this.#sight.panBy(dx, dy),
      zoomAt: (at, factor) => this.#sight.zoom(factor, at),
      pointAt: (at) => this.#pointAt(at),
      tap: (at) => {
        const place = this.#sight.placeUnder(at);
        if (place) this.#pointing.tap(place);
      },
    });
    element.addEventListener("keydown", (event) => this.#keys.press(event));
    element.addEventListener("blur", () => this.#pointing.stopWalking());
    new ResizeObserver(() => this.#sight.settle()).observe(element);
  }

  #recall(): void {
    const state = this.#kept.recall();
    if (!state) return;
    this.#usePlan(state.uri);
    this.#switch(state.pinned, state.marked ?? true);
    if (state.room) this.#unfold(true);
  }

  #listen(message: ToPreview): void {
    switch (message.type) {
      case "plan":
        this.#usePlan(message.uri);
        this.#page.plan = message.name;
        this.#switch(message.pinned, message.marked);
        return;
      case "picture":
        if (message.picture.uri === this.#uri)
          this.#frames.show(withPicture(this.#frames.newest, message.picture));
        return;
      case "changes":
        if (message.uri === this.#uri) this.#showChanges(message.told);
        return;
      case "gone":
        if (message.uri === this.#uri)
          this.#frames.show({ ...this.#frames.newest, gone: message.message });
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
    this.#kept.now();
    this.#uri = uri;
    this.#onStage = null;
    const kept = this.#kept.of(uri);
    this.#wall = kept?.wall ?? null;
    this.#layers.off = kept?.off ?? this.#layers.off;
    applyLayers(this.#stage.element, this.#layers.off);
    this.#sight.clear();
    this.#options.clear(this.#wall);
    this.#showChanges(null);
    this.#pointing.drawn(null, []);
    this.#frames.show(NOTHING);
  }

  #paint(shown: Shown): void {
    const { latest } = shown;
    const drawn = shown.drawn && this.#room.seen(shown.drawn);
    this.#toolbar.unfolds = latest?.unfolds === true;
    // What stands round the picture comes first: it takes its room.
    this.#page.note = noteOf(shown);
    const titles = new Map(latest?.walls.map((wall) => [wall.name, wall.title]));
    this.#findings.show(latest?.findings ?? [], titles);
    if (drawn && !this.#onStage) this.#strip.show(drawn.scene, drawn.walls, this.#wall);
    if (drawn && drawn !== this.#onStage) this.#draw(drawn);
    this.#markCursor();
  }

  /** What can wait until the picture is seen. */
  #afterFrame(): void {
    const { latest } = this.#frames.painted;
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
    this.#sight.show(scene, this.#kept.of(picture.uri));
    this.#stage.mark("finding", null);
    this.#pointing.drawn(picture, this.#frames.newest.latest?.findings ?? []);
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
    this.#kept.soon();
  }

  #pointAt(at: Place | null): void {
    const place = at && this.#sight.placeUnder(at);
    this.#pointing.pointAt(place);
    if (place) this.#keepCardFrom({ left: place.x, bottom: place.y });
  }

  #keepCardFrom(box: Pick<PictureBox, "left" | "bottom">): void {
    this.#card.keepFrom(this.#sight.shareOfRoom(box));
  }

  #markCursor(): void {
    const picture = this.#frames.newest.latest;
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

  /** Whether it stays with its plan, and whether changed pieces are marked. */
  #switch(pinned: boolean, marked: boolean): void {
    this.#pinned = pinned;
    this.#toolbar.pinned = pinned;
    this.#marked = marked;
    this.#toolbar.marked = marked;
    this.#kept.soon();
  }

  #pin(pinned: boolean): void {
    this.#switch(pinned, this.#marked);
    this.#host.send({ type: "pin", pinned });
  }

  /** Shows the room unfolded, or its walls as they are; the room comes with the next picture. */
  #unfold(shown: boolean): void {
    this.#room.isOn = shown;
    this.#toolbar.unfolded = shown;
    this.#host.send({ type: "room", shown });
    if (this.#frames.newest.drawn) this.#frames.repaint();
    this.#kept.soon();
  }

  #showOptions(shown: boolean): void {
    this.#toolbar.optionsShown = shown;
    this.#options.turn(shown);
  }

  #mark(marked: boolean): void {
    this.#switch(this.#pinned, marked);
    this.#host.send({ type: "mark", marked });
    if (!marked) this.#showChanges(null);
  }

  async #export(format: ExportFormat): Promise<void> {
    const { drawn, room } = this.#stage;
    if (drawn) this.#host.send(await exportSeen(drawn, room, format));
  }

  /** How this preview stands, for a reload. */
  #standing(): Standing | null {
    if (this.#uri === null) return null;
    const { scene, view: seen } = this.#sight;
    const view = scene && seen && keepView(seen, scene, this.#wall, this.#layers.off);
    const [pinned, marked, room] = [this.#pinned, this.#marked, this.#room.isOn];
    return { uri: this.#uri, pinned, marked, room, view };
  }
}

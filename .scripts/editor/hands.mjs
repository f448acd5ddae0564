// A person's hands for the tests in the editor: they run inside the editor, where they see what an
// extension sees; for keys, mouse and eyes they ask this server, which holds the window's page.
// It also takes down what the tests tell.
import { createServer } from "node:http";
import { mkdirSync } from "node:fs";
import path from "node:path";

/**
 * Starts the server. `told` is called with each line that the tests tell, `secondPhase` before they
 * load the window anew; `shots` is a folder.
 */
export async function startHands({ shots, told, secondPhase }) {
  let page = null;
  let reported = null;
  const report = new Promise((resolve) => {
    reported = resolve;
  });
  const acts = {
    ...personActs(() => page, shots),
    secondPhase,
    tell: ({ line }) => told(line),
    report: ({ counts }) => reported(counts),
  };
  const server = createServer((request, response) => {
    // Tests in the browser's own extension host come from another origin.
    response.setHeader("Access-Control-Allow-Origin", "*");
    response.setHeader("Access-Control-Allow-Headers", "*");
    if (request.method !== "POST") return response.end();
    readJson(request)
      .then(({ act, ...rest }) => acts[act](rest))
      .then((answer) => response.end(JSON.stringify({ answer: answer ?? null })))
      .catch((error) => response.writeHead(500).end(String(error?.message ?? error)));
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    url: `http://127.0.0.1:${server.address().port}/`,
    report,
    take: (newPage) => {
      page = newPage;
    },
    close: () => server.close(),
  };
}

async function readJson(request) {
  const parts = [];
  for await (const part of request) parts.push(part);
  return JSON.parse(Buffer.concat(parts).toString("utf8"));
}

/** How long a person waits for a thing to show, in milliseconds. */
const PATIENCE = 15_000;

function personActs(page, shots) {
  const surface = (where = "window") => {
    const [kind, of] = where.split(/:(.*)/s);
    if (kind === "preview") return previewFrame(page(), of);
    return kind === "frame" ? frameWith(page(), of) : page();
  };
  const locate = async ({ selector, where, nth = 0 }) =>
    (await surface(where)).locator(selector).nth(nth);
  return {
    press: ({ key }) => page().keyboard.press(key),
    type: ({ text, delay }) => page().keyboard.type(text, { delay }),
    click: async ({ options, ...at }) =>
      (await locate(at)).click({ timeout: PATIENCE, ...options }),
    hover: async (at) => (await locate(at)).hover({ timeout: PATIENCE }),
    waitFor: async ({ state = "visible", ...at }) =>
      (await locate(at)).waitFor({ state, timeout: PATIENCE }),
    boxOf: async (at) => (await locate(at)).boundingBox({ timeout: PATIENCE }),
    mouse: ({ move, args }) => page().mouse[move](...args),
    evaluate: async ({ expression, where }) => (await surface(where)).evaluate(expression),
    focus: () => page().bringToFront(),
    resize: (size) => page().setViewportSize(size),
    emulate: ({ media }) => page().emulateMedia(media),
    screenshot: async ({ name }) => {
      mkdirSync(shots, { recursive: true });
      const file = path.join(shots, `${name}.png`);
      await page().screenshot({ path: file });
      return file;
    },
  };
}

/** The inner frame of a preview that shows (of the plan with a name); webviews are two nested frames. */
function previewFrame(page, plan) {
  const name = plan === undefined ? "A preview" : `A preview of ${plan}`;
  return findFrame(page, name, (frame) => isShownPreview(frame, plan));
}

/** The frame in which a thing is, by its CSS selector. */
function frameWith(page, selector) {
  const frames = (frame) => frame !== page.mainFrame() && frame.locator(selector).count();
  return findFrame(page, `A frame with ${selector}`, async (frame) => (await frames(frame)) > 0);
}

async function findFrame(page, name, isIt) {
  const until = Date.now() + PATIENCE;
  while (Date.now() < until) {
    // A frame may go away while it is asked.
    for (const frame of page.frames()) if (await isIt(frame).catch(() => false)) return frame;
    await page.waitForTimeout(50);
  }
  throw new Error(`${name} does not show`);
}

/** Told of the document in the frame itself, where there is a page. */
const SHOWS_PREVIEW = `
  document.documentElement.dataset.gaugelath === "preview" &&
  document.visibilityState === "visible" &&
  innerWidth > 0 &&
  (document.querySelector(".stage")?.getAttribute("aria-label") ?? "")`;

async function isShownPreview(frame, plan) {
  const label = await frame.evaluate(SHOWS_PREVIEW);
  return typeof label === "string" && (plan === undefined || label === `Picture of ${plan}`);
}

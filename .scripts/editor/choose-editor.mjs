// Which VS Code the tests run in. GAUGELATH_EDITOR says one: `server`, `desktop` or `none`.
import { findBrowser } from "./browser.mjs";
import { downloadDesktop, openDesktopWindow } from "./desktop-window.mjs";
import { installServer, isServerInstalled, missingPackages } from "./install.mjs";
import { installPackage, openServerWindow } from "./server-window.mjs";

/** An editor, or the reason why there is none. */
export async function chooseEditor() {
  const wish = process.env.GAUGELATH_EDITOR ?? "";
  if (wish === "none") return { editor: null, reason: "GAUGELATH_EDITOR=none" };
  if (wish !== "desktop" && isServerInstalled() && findBrowser()) return { editor: serverEditor };
  const reasons = [];
  if (wish !== "server") {
    const { executable, reason } = await downloadDesktop();
    if (executable) return { editor: desktopEditor(executable) };
    reasons.push(reason);
  }
  if (wish !== "desktop") {
    const missing = missingPackages();
    if (missing.length === 0 && installServer()) return { editor: serverEditor };
    const why = missing.length > 0 ? `this machine lacks ${missing.join(", ")}` : "see above";
    reasons.push(`VS Code's server could not be installed (${why})`);
  }
  return { editor: null, reason: reasons.join("; ") };
}

const serverEditor = {
  name: "VS Code's server and Chromium",
  cannot: () => null,
  async open(options) {
    if (options.install) await installPackage(options.install, options.extensions);
    return openServerWindow(options);
  },
};

function desktopEditor(executable) {
  return {
    name: "VS Code",
    cannot: ({ web }) =>
      web ? "the desktop's VS Code has no browser extension host for tests" : null,
    open: (options) => openDesktopWindow(executable, options),
  };
}

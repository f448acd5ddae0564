// Runs the suites of test/editor/ in a real VS Code: its own server with Chromium where that is
// installed (.scripts/editor/install.mjs), else a VS Code that @vscode/test-electron downloads. Prints
// what the tests tell; where no editor can be had, says so and counts every suite as skipped.
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { ROOT } from "../steps.mjs";
import { bundleTests, suitesOf, testsOf } from "./bundle-tests.mjs";
import { startHands } from "./hands.mjs";
import { chooseEditor } from "./choose-editor.mjs";
import { packExtension } from "./pack.mjs";
import { SITTINGS } from "./sittings.mjs";

/** The longest that one sitting may take, in milliseconds. */
const SITTING = 600_000;

/** Runs the sittings whose names are given, or all; returns what passed, failed and was skipped. */
export async function runEditorTests(names = [], grep = null) {
  const sittings = SITTINGS.filter(({ name }) => names.length === 0 || names.includes(name));
  const { editor, reason } = await chooseEditor();
  const total = { passed: 0, failed: 0, skipped: 0 };
  if (editor) await bundleTests(sittings);
  for (const sitting of sittings) {
    const why = editor ? editor.cannot(sitting) : reason;
    const counts = why ? skip(sitting, why) : await sit(editor, sitting, grep);
    for (const key of Object.keys(total)) total[key] += counts[key];
  }
  return total;
}

function skip(sitting, why) {
  const suites = suitesOf(sitting);
  const counted = suites.length === 1 ? "1 suite" : `${suites.length} suites`;
  console.log(`\n  Skipped: the editor tests "${sitting.name}" (${counted}): ${why}`);
  return { passed: 0, failed: 0, skipped: suites.length };
}

async function sit(editor, sitting, grep) {
  console.log(`\n  In ${editor.name}: ${sitting.name}`);
  const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-editor-"));
  const shots = path.join(ROOT, ".vscode-test", "shots", sitting.name);
  rmSync(shots, { recursive: true, force: true });
  const task = { suites: sitting.name, grep, phase: 1 };
  const hands = await startHands({
    shots,
    told: (line) => console.log(line),
    // Once the window was loaded anew, the tests begin again, and see that it is the second time.
    secondPhase: () => writeTask(folder, { ...task, hands: hands.url, phase: 2 }),
  });
  let window = null;
  try {
    window = await editor.open(await prepare(sitting, folder, { ...task, hands: hands.url }));
    hands.take(window.page);
    const late = timeout(
      SITTING,
      `The sitting "${sitting.name}" took over ${SITTING / 60_000} minutes`,
    );
    return await Promise.race([hands.report, window.ended, late]);
  } catch (error) {
    console.log(`  The sitting "${sitting.name}" broke off: ${error.message}`);
    return { passed: 0, failed: 1, skipped: 0 };
  } finally {
    await window?.close();
    hands.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function prepare(sitting, folder, task) {
  const workspace = path.join(folder, "workspace");
  cpSync(path.join(ROOT, "test", "editor", "workspace"), workspace, { recursive: true });
  writeTask(folder, task);
  if (sitting.git) beginRepository(workspace);
  const extensions = path.join(folder, "extensions");
  mkdirSync(extensions);
  const made = sitting.packaged || sitting.web ? await pack() : null;
  return {
    folder,
    workspace,
    extensions,
    extension: extensionOf(sitting, folder, made),
    install: sitting.packaged ? made.file : null,
    tests: testsOf(sitting),
    trusted: sitting.trusted,
    web: sitting.web,
    git: sitting.git,
  };
}

/** The workspace as a repository with one commit. */
function beginRepository(workspace) {
  const git = (...args) => {
    const { status, stderr } = spawnSync("git", args, { cwd: workspace, encoding: "utf8" });
    if (status !== 0) throw new Error(`git ${args.join(" ")}: ${stderr}`);
  };
  git("init", "-q", "-b", "main");
  git("config", "user.name", "Tile Setter");
  git("config", "user.email", "setter@example.invalid");
  git("config", "commit.gpgsign", "false");
  writeFileSync(path.join(workspace, ".git", "info", "exclude"), ".gaugelath-test.json\n");
  git("add", ".");
  git("commit", "-qm", "Begin");
}

/** How the tests find this run, in every kind of extension host. */
function writeTask(folder, task) {
  writeFileSync(path.join(folder, "workspace", ".gaugelath-test.json"), JSON.stringify(task));
}

let packed = null;

/** Packs the extension once for all sittings. */
function pack() {
  packed ??= packExtension();
  return packed;
}

/** The folder of the extension that is under development in a sitting. */
function extensionOf({ web, packaged }, folder, made) {
  // The checkout's manifest has its code be ES modules, which a browser's extension host can't take.
  if (web) return made.folder;
  return packaged ? emptyExtension(folder) : ROOT;
}

/** Tests run beside an extension under development; this one does nothing. */
function emptyExtension(folder) {
  const extension = path.join(folder, "nothing");
  mkdirSync(extension);
  const manifest = {
    name: "nothing",
    publisher: "test",
    version: "1.0.0",
    engines: { vscode: "*" },
  };
  writeFileSync(path.join(extension, "package.json"), JSON.stringify(manifest));
  return extension;
}

function timeout(ms, message) {
  return new Promise((_resolve, reject) => {
    setTimeout(() => reject(new Error(message)), ms).unref();
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  // Names of sittings, and --grep=WORDS of the titles of tests.
  const words = process.argv.slice(2);
  const grep = words.find((word) => word.startsWith("--grep="))?.slice("--grep=".length);
  const names = words.filter((word) => !word.startsWith("--"));
  const { passed, failed, skipped } = await runEditorTests(names, grep);
  console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
  process.exitCode = failed > 0 ? 1 : 0;
}

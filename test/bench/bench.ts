// The benchmark: seeded inputs, one run, a table. The engine is bundled and minified with esbuild
// first, as the command line is; `gaugelath check` is the built dist/cli.cjs.
import { benchActivation } from "./activation.js";
import { loadSubject } from "./bundle.js";
import { benchChangedText, benchManyPieces } from "./changed-text.js";
import { benchChoice } from "./choose-start.js";
import { benchCompare, benchPortfolio } from "./compare-plans.js";
import { benchGrowth, benchMillion } from "./million-pieces.js";
import { benchRoom } from "./search-room.js";
import { benchPaintedPicture } from "./painted-picture.js";
import { benchServerMemory } from "./server-memory.js";
import { type Timing } from "./statistics.js";
import { barTable, isMet, timingTable, type Bar } from "./table.js";
import { benchWholeProcess } from "./whole-process.js";

const subject = await loadSubject();
const timings: Timing[] = [];
const bars: Bar[] = [];
const notes: string[] = [];

// The browser comes last: while it runs down, it takes the processor from whatever is timed next.
const benches = [
  benchChangedText,
  benchManyPieces,
  benchMillion,
  benchChoice,
  benchRoom,
  benchPaintedPicture,
];
for (const bench of benches) {
  const result: { timings: Timing[]; bars: Bar[]; note?: string } = await bench(subject);
  timings.push(...result.timings);
  bars.push(...result.bars);
  if (result.note) notes.push(result.note);
}
const wholeProcess = benchWholeProcess();
timings.push(...wholeProcess.timings);
const compared = benchCompare(subject);
const portfolio = benchPortfolio();
timings.push(...compared.timings, ...portfolio.timings);
notes.push(portfolio.note);
const growth = benchGrowth(subject);
const memory = await benchServerMemory();
const activation = benchActivation();
bars.push(...wholeProcess.bars, ...compared.bars, ...growth.bars, ...memory.bars);
bars.push(...activation.bars);
notes.push(memory.note, activation.note);

console.log(`Node ${process.version}, ${process.platform} ${process.arch}\n`);
console.log(timingTable(timings));
console.log(`\n${growth.table}\n\n${barTable(bars)}\n`);
for (const note of notes) console.log(note);
if (process.argv.includes("--strict") && !bars.every(isMet)) process.exitCode = 1;

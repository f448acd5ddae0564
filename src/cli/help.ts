import type { CommandName } from "./request.js";

const GENERAL = `Gaugelath lays out tiled walls that are written as text (.tileplan).

Usage: gaugelath COMMAND ...

Commands:
  check FILE...           tell what is wrong with plans
  solve FILE              lay the tile: a short reading, or every piece as JSON
  options FILE            the best few layouts of each wall side by side
  draw FILE -o OUT.svg    draw the walls with every piece
  sheet FILE -o OUT       the setter's sheet and the shopping list: PDF, lists, drawings
  compare OLD NEW         say what a change does to the walls: files, folders, git revisions
  show FILE               every course in a line, for git diff
  merge REPORT...         the reports of several machines as one
  tidy FILE...            put plans into the house style
  serve --stdio           the language server, for editors

Help: gaugelath COMMAND --help     Version: gaugelath --version

Examples:
  gaugelath check bath.tileplan
  gaugelath draw bath.tileplan -o bath.svg
  gaugelath solve bath.tileplan --format json

Exits: 0 clean; 1 an error was found (with --strict: or a warning); 2 it could not run.
`;

const COMMON = `  --strict              count a warning as an error (exit 1)
  --root FOLDER         the folder that \`use\` may not leave (else the nearest one upward
                        with .git in it, or the working folder)
  -h, --help            this help
`;

const COLOURS = `Colours are written on a terminal only; NO_COLOR=1 turns them off, FORCE_COLOR=1 on.
`;

const CHECK = `Tells what is wrong with plans: in the text, and in the layout by the rules of the trade.

Usage: gaugelath check FILE... [--format text|json|sarif] [--shard I/N] [--strict] [--root FOLDER]

FILE is a plan, a folder (every .tileplan in it and below it), or - for standard input.

Options:
  --format FORMAT       text (for people), json, or sarif (SARIF 2.1.0, for code hosts)
  --shard I/N           only part I of N, for machines side by side; gaugelath merge joins the
                        reports
${COMMON}
Examples:
  gaugelath check bath.tileplan
  gaugelath check walls/ --strict
  gaugelath check . --format sarif > findings.sarif
  git show HEAD:bath.tileplan | gaugelath check -

Exits: 0 clean; 1 an error was found (with --strict: or a warning); 2 a plan could not be read,
or the words of the command could not be understood.
${COLOURS}`;

const SOLVE = `Lays the tile: what was chosen and why, or every piece with its outline.

Usage: gaugelath solve FILE [--format text|json] [-o OUT] [--strict] [--root FOLDER]

FILE is a plan, or - for standard input. What is wrong with it goes to standard error.

Options:
  --format FORMAT       text (a short reading) or json (the solved plan, lengths in mm)
  -o, --output OUT      write to a file, whole or not at all, instead of standard output
${COMMON}
Examples:
  gaugelath solve bath.tileplan
  gaugelath solve bath.tileplan --format json -o bath.json

Exits: as for check; 2 also where OUT could not be written.
${COLOURS}`;

const OPTIONS = `Lays the best few starts of each wall side by side, with the numbers that decide between them; also
where the start is written down, and what the solver would choose in its place. Then works back from
the tile: where openings and holes would stand, and the wall's top, for tiles to stay whole.

Usage: gaugelath options FILE [--format text|json] [-o OUT] [--strict] [--root FOLDER]

FILE is a plan, or - for standard input. What is wrong with it goes to standard error. The numbers
decide in the order of the table's first rows: fewest slivers, cuts under half, best balance, fewest
cuts, tiles, narrowest joint.

Options:
  --format FORMAT       text (tables) or json (lengths in mm)
  -o, --output OUT      write to a file, whole or not at all, instead of standard output
${COMMON}
Examples:
  gaugelath options bath.tileplan
  gaugelath options bath.tileplan --format json -o options.json

Exits: as for check; 2 also where OUT could not be written.
${COLOURS}`;

const DRAW = `Draws the walls of a plan with every piece, its cuts, joints and dimensions, as SVG.

Usage: gaugelath draw FILE -o OUT.svg [--room] [--strict] [--root FOLDER]

FILE is a plan, or - for standard input. What is wrong with it goes to standard error, and what
could be understood is drawn all the same.

Options:
  -o, --output OUT.svg  the picture, written whole or not at all; - for standard output. Another
                        ending is refused: gaugelath sheet writes .pdf, .png and .dxf
  --room                the room unfolded: its walls side by side in their order, corners marked
${COMMON}
Examples:
  gaugelath draw bath.tileplan -o bath.svg
  gaugelath draw - -o - < bath.tileplan > bath.svg

Exits: as for check; 2 also where OUT.svg could not be written.
${COLOURS}`;

const SHEET = `Prints the setter's sheet of each wall, the shopping list and the story poles.

Usage: gaugelath sheet FILE -o OUT [--paper letter|a4] [--only PARTS] [--revision TEXT]
                       [--format FORMAT] [--strict] [--root FOLDER]
       gaugelath sheet --schema

FILE is a plan, or - for standard input. What is wrong with it goes to standard error, and on the
sheet of the wall. OUT's ending says the format:

  .pdf                  sheets to print, the story poles in true size
  .svg  .png            a picture of each sheet (OUT-PART.svg where there are several)
  .dxf                  a drawing of each wall and of each surface inside its openings, in true
                        size, its layers by meaning
  .csv                  OUT-cuts.csv and OUT-purchases.csv, for a spreadsheet
  .md                   the words and tables, for a page of text
  .json                 all of it as data, lengths in mm (its schema: --schema)

A folder takes all of them: sheet.pdf, .md and .json, cuts.csv, purchases.csv, drawings/ (.dxf), and
pages/ with a picture of each sheet but the poles', which are of use in true size alone.

Options:
  -o, --output OUT      a file, written whole or not at all; a folder; or - for standard output
  --format FORMAT       pdf, svg, png, dxf, csv, md or json, where the ending does not say it
  --paper SIZE          letter or a4 (else letter for plans in inches, a4 for others)
  --only PARTS          some parts, with commas between: a page (plan, shopping-list), a wall by
                        its name, cuts, purchases
  --revision TEXT       what to print as the revision (else the commit, where git keeps the plan)
  --schema              print the JSON Schema of the JSON
${COMMON}
Examples:
  gaugelath sheet bath.tileplan -o bath.pdf
  gaugelath sheet bath.tileplan -o bath.pdf --only back,shopping-list --paper a4
  gaugelath sheet bath.tileplan -o cuts.csv --only cuts
  gaugelath sheet bath.tileplan -o for-the-setter/

Exits: as for check; 2 also where OUT could not be written.
${COLOURS}`;

const TIDY = `Puts plans into the house style: two spaces a block, comments in columns. Their meaning stays, and
a line that can't be understood stays to the letter.

Usage: gaugelath tidy FILE... [--check]

FILE is a plan, a folder (every .tileplan in it and below it), or - for standard input, which is
tidied to standard output. A file is written whole or not at all.

Options:
  --check               write nothing; exit 1 where a plan would be changed
  -h, --help            this help

Examples:
  gaugelath tidy bath.tileplan
  gaugelath tidy walls/ --check

Exits: 0 done; 1 with --check: a plan is untidy; 2 a file could not be read or written.
`;

const SERVE = `The language server for editors, by the Language Server Protocol over standard input and output.

Usage: gaugelath serve --stdio

An editor starts it; the README says how to set up some.
`;

const COMPARE = `Says what a change does to the walls: what moved, which cuts changed, which findings came and
went, what is to be bought. Pieces are recognised by their place in the course.

Usage: gaugelath compare OLD NEW [OPTIONS]
       gaugelath compare --from REV [--to REV] [FILE...] [OPTIONS]

OLD and NEW are two plans or two folders of them. With --from, FILE is a plan or a folder in a git
repository (else this folder), renames are followed, and used files are read at the same revision.

Options:
  --from REV            the revision before: a commit, a branch, HEAD~3
  --to REV              the revision after (else the files as they are)
  --format FORMAT       text, markdown (for a review comment), json, or svg
  -o, --output FOLDER   write the pictures of what changed into a folder, with markdown the report
                        (compare.md) beside them
  --fail-on WHAT        end with 1 on new-findings (errors, warnings, set courses that would be cut
                        differently), more-tiles, or any change; several with commas between
  --shard I/N           only part I of N of the plans
  --root FOLDER         the folder that \`use\` may not leave, for files that are not in git
  -h, --help            this help

Examples:
  gaugelath compare bath-old.tileplan bath.tileplan
  gaugelath compare --from HEAD bath.tileplan
  gaugelath compare --from main --to HEAD . --format markdown -o review
  gaugelath compare --from HEAD~1 . --fail-on new-findings,more-tiles

Exits: 0 compared; 1 what --fail-on names was found; 2 something could not be read.
${COLOURS}`;

const SHOW = `Prints a plan as it is laid, a course a line, for git: its diff then speaks of cuts.

Usage: gaugelath show FILE [--root FOLDER]

In .gitattributes:  *.tileplan diff=tileplan
Once a clone:       git config diff.tileplan.textconv "gaugelath show"

Exits: 0 shown, whatever was found in it; 2 it could not be read.
`;

const MERGE = `Joins the reports of check (json, sarif) or compare (json) that several machines wrote.

Usage: gaugelath merge REPORT... [-o OUT]

The reports are of one kind, in the order of their shards; the whole is what one machine would write.

Options:
  -o, --output OUT      write to a file, whole or not at all, instead of standard output
  -h, --help            this help

Examples:
  gaugelath check plans --shard 1/2 --format sarif > 1.sarif
  gaugelath merge 1.sarif 2.sarif -o all.sarif

Exits: 0 merged; 2 a report could not be read.
`;

const ABOUT: Readonly<Record<CommandName, string>> = {
  check: CHECK,
  solve: SOLVE,
  options: OPTIONS,
  draw: DRAW,
  sheet: SHEET,
  tidy: TIDY,
  compare: COMPARE,
  show: SHOW,
  merge: MERGE,
  serve: SERVE,
};

/** The help of a command, or the general one. */
export function helpText(about: CommandName | null): string {
  return about === null ? GENERAL : ABOUT[about];
}

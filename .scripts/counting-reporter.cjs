// Mocha's own report, and the counts in a file for whoever started it.
const { writeFileSync } = require("node:fs");
const { reporters } = require("mocha");

module.exports = class CountingReporter extends reporters.Spec {
  constructor(runner, options) {
    super(runner, options);
    runner.once("end", () => {
      writeFileSync(options.reporterOptions.counts, JSON.stringify(this.stats));
    });
  }
};

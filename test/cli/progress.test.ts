import assert from "node:assert/strict";
import type { Host } from "../../src/cli/host.js";
import { Progress } from "../../src/cli/progress.js";

function told(watched: boolean, wait: number): string {
  let text = "";
  const host = { watched, err: (part: string) => void (text += part) } as Partial<Host> as Host;
  const { now } = Date;
  let time = 0;
  Date.now = () => time;
  try {
    const progress = new Progress(30, "checking plans", host);
    for (const done of [10, 20, 30]) {
      time += wait;
      progress.tell(done);
    }
    progress.end();
  } finally {
    Date.now = now;
  }
  return text;
}

describe("Progress", () => {
  it("is one line that is written over and cleared in the end", () => {
    assert.equal(
      told(true, 200),
      "\r\u001b[Kchecking plans: 10 of 30\r\u001b[Kchecking plans: 20 of 30\r\u001b[K",
    );
  });

  it("is silent where nobody watches, or where it is over at once", () => {
    assert.equal(told(false, 200), "");
    assert.equal(told(true, 10), "");
  });
});

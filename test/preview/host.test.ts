import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import { needsBrowser, openModule } from "./support/open-preview.js";

describe("the extension, as the preview sees it", function () {
  needsBrowser(this);
  let page: Page;

  before(async () => {
    page = await openModule("src/preview/host.ts");
  });

  after(() => page.context().close());

  /** Connects to an editor with this state; answers what the code gives, heard messages among it. */
  function connected<Answer>(state: string, code: string): Promise<Answer> {
    return page.evaluate<Answer>(`(async () => {
      const heard = [];
      const sent = [];
      let kept = ${state};
      const editor = {
        postMessage: (message) => sent.push(message),
        getState: () => kept,
        setState: (state) => { kept = state; },
      };
      const host = subject.connectHost(editor, (message) => heard.push(message.type));
      ${code}
    })()`);
  }

  it("is heard when it sends messages that are known, and only then", async () => {
    const heard = await connected<string[]>(
      "null",
      `for (const message of [
         { type: "cursor", cursor: null },
         { type: "cursor", cursor: 7 },
         { type: "unknown" },
         "text",
         null,
         { type: "gone", uri: "u", message: "m" },
       ]) window.postMessage(message);
       await new Promise((resolve) => setTimeout(resolve, 50));
       return heard;`,
    );
    assert.deepEqual(heard, ["cursor", "gone"]);
  });

  it("is sent messages, and keeps a state", async () => {
    const answer = await connected(
      "null",
      `host.send({ type: "ready" });
       host.keep({ uri: "u", pinned: true });
       return [sent, host.recall()];`,
    );
    assert.deepEqual(answer, [[{ type: "ready" }], { uri: "u", pinned: true }]);
  });

  it("gives back no state that is something else", async () => {
    for (const state of ["null", "7", "{}", '{ uri: 1, pinned: "no" }']) {
      assert.equal(await connected(state, "return host.recall();"), null, state);
    }
  });
});

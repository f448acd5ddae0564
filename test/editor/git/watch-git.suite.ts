import { movedWindow } from "../moved-window.js";
import { beginAnew, commitAll, refreshGit } from "../repository.js";

describe("a comparison with the last commit", () => {
  afterEach(beginAnew);

  it("stays with the commit that is the last one", async () => {
    const { editor, comparison } = await movedWindow();
    await editor.document.save();
    commitAll("Move the window");
    await refreshGit();
    await comparison.untilAgainst(/"Move the window"$/);
    await comparison.untilSaid(/^Nothing changed but the text\.$/);
  });
});

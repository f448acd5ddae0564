import { execFileSync } from "node:child_process";
import { findingOf } from "../findings.js";
import { closeAll, openPlan, replace } from "../plans.js";
import { until } from "../until.js";

/** The ids of the server's processes that this extension host has started. */
function serverProcesses(): number[] {
  const rows = execFileSync("ps", ["-o", "pid=,ppid=,args=", "-e"], { encoding: "utf8" });
  return rows
    .split("\n")
    .map((row) => /^\s*(\d+)\s+(\d+)\s+(.*)$/.exec(row))
    .filter((row) => Number(row?.[2]) === process.pid && row?.[3]?.includes("server.js"))
    .map((row) => Number(row![1]));
}

describe("the server's process", () => {
  after(closeAll);

  it("is started anew when it dies, and the work goes on", async function () {
    if (process.platform === "win32") return this.skip();
    const editor = await openPlan("plain.tileplan");
    const [first] = await until("the process", () => {
      const found = serverProcesses();
      return found.length === 1 && found;
    });
    process.kill(first!, "SIGKILL");
    await until("another process", () => serverProcesses().some((id) => id !== first));
    await replace(editor, "60 3/16", "61");
    await findingOf(editor.document.uri, "cut/sliver");
  });
});

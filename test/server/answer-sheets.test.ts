import assert from "node:assert/strict";
import type { PrintedFile, PrintFormat, SheetAnswer } from "../../src/server/protocol.js";
import { ComparingClient, stockOf, STOCK_URI, URI, wallOf } from "./comparing.js";

describe("sheets that clients ask for", () => {
  let client: ComparingClient;
  beforeEach(async () => {
    client = new ComparingClient();
    await client.start();
    await client.open(STOCK_URI, stockOf());
    await client.open(URI, wallOf(40));
  });
  afterEach(() => client.connection.dispose());

  const sheet = (uri = URI): Promise<SheetAnswer | null> =>
    client.connection.sendRequest("gaugelath/sheet", { uri });
  const print = (format: PrintFormat): Promise<PrintedFile[] | null> =>
    client.connection.sendRequest("gaugelath/printSheet", { uri: URI, format });
  const textOf = ({ data }: PrintedFile): string => Buffer.from(data, "base64").toString();

  it("are of the text as it is open, with the stock that it uses", async () => {
    const answer = await sheet();
    assert.ok(answer!.paper.pages.some(({ wall }) => wall === "back"));
    assert.equal(answer!.size, "letter");
    assert.ok(JSON.stringify(answer!.paper).includes("square"));
  });

  it("are none of a plan that isn't open", async () => {
    assert.equal(await sheet("file:///plans/none.tileplan"), null);
  });

  it("are printed in each format", async () => {
    const [pdf] = (await print("pdf"))!;
    assert.ok(textOf(pdf!).startsWith("%PDF-1.7"));
    const [markdown] = (await print("md"))!;
    assert.match(textOf(markdown!), /^# /);
    const lists = (await print("csv"))!;
    assert.deepEqual(
      lists.map(({ part }) => part),
      ["cuts", "purchases"],
    );
    const [drawing] = (await print("dxf"))!;
    assert.equal(drawing!.part, "wall-back");
    assert.match(textOf(drawing!), /TILE-WHOLE/);
    const [first] = (await print("svg"))!;
    assert.match(textOf(first!), /^<svg /);
    assert.equal((JSON.parse(textOf((await print("json"))![0]!)) as { schema: number }).schema, 1);
  });
});

import { exampleNames, exampleText } from "../support/examples.js";
import { mutate } from "../support/mutate.js";
import { randomFrom } from "../support/random.js";
import { Plans, TURNS } from "./plans.js";

describe("the service", () => {
  it("answers everything at every place of broken texts without a crash", async () => {
    const random = randomFrom(5);
    const texts = exampleNames().map(exampleText);
    for (let i = 0; i < 60; i++) {
      const text = mutate(texts[i % texts.length]!, random);
      const plans = new Plans();
      const { service } = plans;
      const document = plans.open(text);
      try {
        const at = { line: random.integer(0, 80), character: random.integer(0, 50) };
        service.diagnostics(document);
        service.hover(document, at, "mm");
        service.completions(document, at);
        service.fixes(document, { start: { line: 0, character: 0 }, end: at });
        service.hints(document);
        service.tokens(document);
        service.outline(document);
        service.folds(document);
        service.selections(document, at);
        service.format(document);
        service.definition(document, at);
        service.renamable(document, at);
        service.picture(document);
        await service.references(document, at, true, TURNS);
        await service.rename(document, at, "new-name", TURNS);
      } catch (error) {
        throw new Error(`in the plan\n${JSON.stringify(text)}`, { cause: error });
      }
    }
  });
});

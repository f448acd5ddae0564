import { CLEAN, FAULTY } from "./plans.js";

/** So many plans in folders, every third with a finding; some share a stock file that has a fault. */
export function manyPlans(count: number): Record<string, string> {
  const files: Record<string, string> = {
    "plans/stock.tileplan": "units inch\ntile spare {\n  face 4 x 4\n  thicknes 1/4\n}\n",
  };
  for (let i = 0; i < count; i++) {
    const text = i % 3 === 0 ? FAULTY : CLEAN;
    const use = i % 7 === 0 ? 'use "../stock.tileplan"\n' : "";
    files[`plans/house ${i % 5}/wall-${i}.tileplan`] = `# ${i}\n${text}${use}`;
  }
  return files;
}

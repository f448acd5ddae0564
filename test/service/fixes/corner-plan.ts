/** Two walls of 3 x 6 tile that meet at a corner; the side wall's tile covers the back wall's right end. */
export function cornerPlan(back: string, side: string, bond = "running 1/2"): string {
  const lay = (start: string): string =>
    `  lay pressed {\n    bond ${bond}\n    joint 1/16\n${start}  }\n`;
  return `use "stock.tileplan"
let line = 30 7/32
wall back "Back wall" {
  size 60 x 48
  right corner side under movement 1/8
${lay(back)}}
wall side "Side wall" {
  size 36 x 48
  left corner back over movement 1/8
${lay(side)}}
`;
}

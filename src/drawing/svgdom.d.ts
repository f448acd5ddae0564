/** What the headless drawing uses of svgdom, which carries no types. */
declare module "svgdom" {
  export function createSVGWindow(): Window & { readonly document: Document };
}

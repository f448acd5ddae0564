/** What a plan is called for people: its file's name. */
export function planName({ path }: { readonly path: string }): string {
  return path.slice(path.lastIndexOf("/") + 1);
}

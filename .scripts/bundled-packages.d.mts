import type { Metafile } from "esbuild";

/** The folders of the packages of which something is in these bundles. */
export declare function packagesIn(metafile: Pick<Metafile, "outputs">): string[];

/** What goes into the package for VS Code as it stands in the folder. */
export declare const FILES: readonly string[];

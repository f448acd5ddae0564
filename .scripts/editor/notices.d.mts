/** The notices for files of dist/ that are packed, and the folders of the packages in them. */
export declare function noticesText(files: readonly string[]): string;
export declare function packagesOf(files: readonly string[]): string[];

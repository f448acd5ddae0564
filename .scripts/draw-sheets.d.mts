export declare function drawSheets(): { readonly file: string; readonly svg: string }[];

/** The papers that sheets are printed on (ANSI/ASME Y14.1 size A; ISO 216 A4), in points. */
export const PAPER_SIZES = {
  letter: { width: 612, height: 792 },
  a4: { width: 595.276, height: 841.89 },
} as const;

export type PaperSize = keyof typeof PAPER_SIZES;

export const POINTS_PER_INCH = 72;

/** Points to a millimetre: 25.4 mm are an inch. */
export const POINTS_PER_MM = POINTS_PER_INCH / 25.4;

/** What stays white at a sheet's edge: half an inch, which every office printer can keep. */
export const MARGIN = 36;

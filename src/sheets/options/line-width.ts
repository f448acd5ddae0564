/** No line is wider, so that a terminal of usual width shows it whole. */
export const LINE_WIDTH = 100;

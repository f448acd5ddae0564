/** Starting a thread costs as much as some plans: fewer than these are done one after the other. */
export const MANY = 32;

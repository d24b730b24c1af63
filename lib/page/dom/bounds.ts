/** Nodes and open shadow roots looked at where all of a page are; a bound on hostile pages. */
export const MOST_NODES = 200_000;
export const MOST_SHADOWS = 4000;
/** Nodes passed between two yields. */
export const NODES_STRIDE = 60;

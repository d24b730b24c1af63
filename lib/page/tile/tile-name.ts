/** What markup calls the tile of one product. */
export const TILE_NAME = /(^|[\s_-])product[-_]?(item|card|tile|box)([\s_-]|$)/i;

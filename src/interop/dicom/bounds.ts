/**
 * What one object may hold. A measurement is a few kilobytes with some hundred elements; these bounds leave ample room
 * and keep a hostile file from costing time or memory. Ours, no source.
 */
export const LARGEST_OBJECT_BYTES = 50_000_000
export const MOST_ELEMENTS = 50_000
export const MOST_ITEMS = 10_000
/** Measurements stand seven deep. */
export const DEEPEST_NESTING = 24
/** The longest value that is read as text; names and titles are far shorter. */
export const LONGEST_TEXT_BYTES = 4_096
/** Readings of one eye that are kept one by one. */
export const MOST_READINGS = 200

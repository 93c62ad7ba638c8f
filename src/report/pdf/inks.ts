/** The inks of a paper; a figure brings its own. */
export const INK = 'rgb("#1d2328")'
export const SOFT = 'rgb("#5d6870")'
export const LINE = 'rgb("#d5dbdf")'
export const ACCENT = 'rgb("#0b6b62")'
export const WARM = 'rgb("#8a5a12")'
export const WARM_WASH = 'rgb("#f6ecd9")'

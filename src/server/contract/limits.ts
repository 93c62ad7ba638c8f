/** The limits of every field, for the pages: what a person types is checked where it is typed. */
export { type Limit, limitInWords, limits, slippedDecimal } from "../../interop/course/limits.js"

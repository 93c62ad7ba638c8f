/**
 * Whether a text can be a FHIR string: R4 allows no control characters and no blank but the common one, and readers may
 * trim the ends. Any other text goes into an extension, in base 64.
 */
export const isPlainText = (text: string): boolean =>
  PLAIN.test(text) && !CONTROL.test(text) && text.trim() === text && !/\p{Surrogate}/u.test(text)

// Control characters count as no blank in a pattern, so they are named.
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/
const PLAIN = /^[ \r\n\t\S]+$/

/** Whether a text can be a FHIR code: no blanks at its ends and no two in a row. */
export const isCode = (text: string): boolean => /^\S+( \S+)*$/.test(text) && isPlainText(text)

export const plain = (text: string | undefined): string | undefined =>
  text !== undefined && isPlainText(text) ? text : undefined

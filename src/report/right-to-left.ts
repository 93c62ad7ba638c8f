/**
 * A text of others inside a sentence of ours. One with letters that run from right to left is set apart (Unicode's
 * first-strong isolate), or it would draw a figure that follows it to its own side: a name in Arabic before a day of
 * birth takes the year with it. Any other text stays as it is.
 */
export const setApart = (text: string): string => (RIGHT_TO_LEFT.test(text) ? `\u2068${text}\u2069` : text)

const RIGHT_TO_LEFT =
  /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Adlam}]/u

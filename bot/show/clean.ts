/**
 * Controls (C0 and C1), line separators, and the marks that turn the direction of what stands around them (U+202A to U+202E,
 * U+2066 to U+2069): typed into a name or a reason they would tear a line apart or show it in another order.
 */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
const UNSHOWABLE = /[\u0000-\u001F\u007F-\u009F\u2028\u2029\u202A-\u202E\u2066-\u2069]+/g;

/** Words as they may stand within one line: line breaks and the like become a space. Never throws, whatever was typed. */
export function oneLine(words: string): string {
  return words.toWellFormed().replaceAll(UNSHOWABLE, ' ');
}

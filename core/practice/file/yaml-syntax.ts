import type { YAMLError } from 'yaml';

/** What YAML itself objects to, in words for someone who has never heard of YAML. */
export function syntaxMistake(
  error: YAMLError,
  text: string,
): { readonly wrong: string; readonly right: string } {
  const word = wordAt(text, error.pos[0]);
  switch (error.code) {
    case 'BAD_SCALAR_START':
      return {
        wrong: `a value that begins with ${word.slice(0, 1)} must stand in quotes`,
        right: `"${word}"`,
      };
    case 'TAG_RESOLVE_FAILED':
      return { wrong: 'a value that begins with ! must stand in quotes', right: `"${word}"` };
    case 'DUPLICATE_KEY':
      return {
        wrong: `"${word.replace(/:$/, '')}" is said twice in one place`,
        right: 'keep one of the two',
      };
    case 'TAB_AS_INDENT':
      return { wrong: 'the line is indented with a tab', right: 'spaces, two for each level' };
    case 'BAD_INDENT':
      return {
        wrong: 'this line is not indented as the lines around it, or a bracket before it is not closed',
        right: 'the same number of spaces as its neighbours, and every [ or { closed',
      };
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return {
        wrong: 'a second ": " on this line, or a line indented too far under it',
        right: 'one "key: value" a line, quotes around a value that holds ": "',
      };
    case 'MISSING_CHAR':
      return {
        wrong: 'a quote, bracket or comma is missing',
        right: 'close every " \' [ and {, a comma between entries',
      };
    case 'MULTIPLE_DOCS':
      return { wrong: 'the file holds more than one document (a line ---)', right: 'one practice a file' };
    default:
      return {
        wrong: `this cannot be read as YAML (${error.message.toLowerCase()})`,
        right: '"key: value" lines and lists with -',
      };
  }
}

/** Faults that leave the rest of the file readable: each of them is told. */
const LOCAL: ReadonlySet<string> = new Set([
  'BAD_SCALAR_START',
  'TAG_RESOLVE_FAILED',
  'DUPLICATE_KEY',
  'TAB_AS_INDENT',
]);

/** Of the other faults only the first is told, and none beside a tab: what follows is mostly its echo. */
export function worthTelling(errors: readonly YAMLError[]): readonly YAMLError[] {
  const tabs = errors.some(({ code }) => code === 'TAB_AS_INDENT');
  const firstOther = tabs ? undefined : errors.find(({ code }) => !LOCAL.has(code));
  return errors.filter((error) => LOCAL.has(error.code) || error === firstOther);
}

/** Offset at which to show a fault: an unclosed quote is noticed at the end of the file, and shown where it opens. */
export function startOfFault(error: YAMLError, text: string): number {
  if (error.code !== 'MISSING_CHAR' || error.pos[0] < text.trimEnd().length) return error.pos[0];
  const opened = /^(?:.*[\s[{,])?(?:'[^'\n]*|"[^"\n]*)$/m.exec(text);
  return opened === null ? error.pos[0] : opened.index + opened[0].search(/["'][^"']*$/);
}

/** The run of characters that starts there, up to a blank, a comma or a closing bracket. */
function wordAt(text: string, offset: number): string {
  return /^[^\s,\]}]*/.exec(text.slice(offset, offset + 200))?.[0] ?? '';
}

import type { Practice } from '../../practice/practice.ts';
import { type Adding, NUMBERS } from './adding.ts';

/** What each scanner is called; `letterIds` gets the ids of one letter. */
export function addScanners(
  practice: Practice,
  { name, byId }: Adding,
  letterIds: Map<string, string>,
): void {
  for (const scanner of practice.scanners) {
    for (const words of [scanner.name, ...scanner.also, scanner.id].flatMap(spellings)) {
      const bare = words.replace(/^the /i, '');
      for (const pattern of patternsOf(bare)) name(pattern, 'scanner-name', scanner.id);
      if (/^[a-z]$/i.test(bare)) letterIds.set(bare.toLowerCase(), scanner.id);
      else if (!/^(\d+|scanner)$/i.test(bare)) {
        const add = words === scanner.id ? byId : name;
        add(bare, /scanner$/i.test(bare) ? 'scanner-name' : 'scanner-bare', scanner.id);
      }
    }
  }
}

/** What a scanner of this name is called besides: "scanner B", "the blue one". */
function patternsOf(bare: string): string[] {
  const short = bare.replace(/ ?scanner$/i, '');
  const loose =
    short === '' || /^[a-z]$/i.test(short)
      ? []
      : ['unit', 'one', 'machine', 'wand'].map((noun) => `${short} ${noun}`);
  if (short !== bare) return loose;
  return [...loose, `scanner ${bare}`, `${bare} scanner`, `unit ${bare}`, `intraoral scanner ${bare}`];
}

/** A name as others may write it: gray for grey, "no 2" for "number two". */
function spellings(words: string): string[] {
  const list = [words];
  if (/grey/i.test(words)) list.push(words.replace(/grey/i, 'gray'));
  if (/gray/i.test(words)) list.push(words.replace(/gray/i, 'grey'));
  const [, stem, last] = /^(.*?)[ -]?(\d{1,2})$/.exec(words) ?? [];
  const spoken = NUMBERS[Number(last)];
  if (stem !== undefined && stem !== '' && spoken !== undefined && Number(last) > 0)
    list.push(`${stem} ${spoken}`);
  const [, digit] = /^number (\w+)$/i.exec(words) ?? [];
  if (digit !== undefined) {
    const at = NUMBERS.indexOf(digit.toLowerCase());
    const figure = at >= 0 ? String(at) : digit;
    list.push(
      `no ${figure}`,
      `no. ${figure}`,
      `number ${figure}`,
      `num ${figure}`,
      ...(NUMBERS[Number(figure)] === undefined ? [] : [`number ${NUMBERS[Number(figure)]}`]),
    );
  }
  return list;
}

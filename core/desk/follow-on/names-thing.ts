import type { Practice } from '../../practice/practice.ts';

/** Whether words that were not recorded name a scanner, a tip or a number, so that they may be what the next note leans on. */
export function namesThing({ scanners }: Practice, text: string): boolean {
  if (/\d|\btips?\b|\bscanners?\b/i.test(text)) return true;
  const typed = ` ${text.toLowerCase().replaceAll(/[^\p{L}]+/gu, ' ')} `;
  return scanners.some(({ name, also }) =>
    [name, ...also].some((own) => typed.includes(` ${own.toLowerCase()} `)),
  );
}

import type { Practice } from '../../practice/practice.ts';
import type { Item } from '../../reading/slots.ts';
import type { SaidKind, SaidMap } from '../../record/entry.ts';
import { inWords } from '../../rules/tips/tip-words.ts';
import { itemWords, tipsAsRanges } from '../../words/item-words.ts';
import { placeWords } from '../../words/place-words.ts';

/** How each kind reads in a list, to stand behind its time: what it happened to comes first. */
export type AllFactWords = {
  readonly [K in SaidKind]: (practice: Practice, fact: SaidMap[K]) => string;
};
export type FactWords = Partial<AllFactWords>;

/** "green scanner and tip 4". */
export function itemsWords(practice: Practice, items: readonly Item[]): string {
  return inWords(items.map((item) => itemWords(practice, item)));
}

/** "tips 1–4, 7"; where a note named none, "tips". */
export function tipsWords(tips: readonly string[] | undefined): string {
  return tips === undefined || tips.length === 0 ? 'tips' : tipsAsRanges(tips);
}

/** " at Surgery 2, Quay Street"; empty where the note named no place. */
export function atPlace(
  practice: Practice,
  { site, room }: { readonly site?: string; readonly room?: string },
): string {
  return site === undefined ? '' : ` at ${placeWords(practice, site, room ?? null)}`;
}

/** " (cracked mirror)"; empty where no reason was given. */
export function because(reason: string | undefined): string {
  return reason === undefined ? '' : ` (${reason})`;
}

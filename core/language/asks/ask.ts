import type { Clause } from '../clause.ts';
import { made, type Said } from '../frames/frame.ts';
import type { Made, Missing } from '../result.ts';
import { itemsOf } from '../roles/items.ts';
import { placeOf } from '../roles/place.ts';
import { timeContext, timeOf } from '../roles/time.ts';
import { resolveForward } from '../times/forward.ts';

export interface AskResult {
  readonly made: Made;
  readonly bonus: number;
  readonly missing?: Missing;
  /** It names nothing of ours: only a note that says nothing else may be read so. */
  readonly whole?: true;
}

/** One kind of question: `question` says that it was put as one, so that bare statements ask less. */
export interface Ask {
  readonly name: string;
  readonly read: (c: Clause, question: boolean) => AskResult | null;
}

/** What a question makes. */
export function ask(
  kind: string,
  slots: Record<string, unknown>,
  bonus: number,
  said: Record<string, Said> = {},
  missing?: Missing,
): AskResult {
  return { made: made(kind, slots, said), bonus, ...(missing === undefined ? {} : { missing }) };
}

/** The clause's words as one line, as its patterns are written: every ask looks at it, so it is made once. */
export function wordsOf(c: Clause): string {
  c.shared.line ??= lineOf(c);
  return c.shared.line;
}

function lineOf(c: Clause): string {
  return c.parts
    .map((p) => p.text)
    .join(' ')
    .replaceAll(" 's", "'s")
    .replace(/ [-–—] /g, ' ')
    .replace(SHORT, (word) => IN_FULL[word] ?? word);
}

/** How people type the words that the patterns of questions are made of. */
const IN_FULL: Readonly<Record<string, string>> = {
  wat: 'what',
  wot: 'what',
  whr: 'where',
  wich: 'which',
  cud: 'could',
  u: 'you',
  r: 'are',
  "where'd": 'where did',
};
const SHORT = /\b(?:wat|wot|whr|wich|cud|u|r|where'd)\b/g;

/** The site that a question names, as its slot. */
export function siteOf(c: Clause): Record<string, unknown> {
  const place = placeOf(c);
  return place?.site === undefined ? {} : { site: place.site };
}

/** The day that a question names, as its slot: a local date. */
export function dayOf(c: Clause, site: unknown): Record<string, unknown> {
  const time = timeOf(c);
  if (time === null) return {};
  c.use(...time.said);
  if (time.span.now === true) return {};
  if (time.span.days.length === 0 && time.span.part === undefined) return {};
  const day = resolveForward(time.span, timeContext(c, typeof site === 'string' ? site : null)).days[0];
  return day === undefined ? {} : { day };
}

/** The one item that a question is about; `null` where it names none. */
export function oneItem(c: Clause, wanted = {}): { item: string; said: Said; missing?: Missing } | null {
  const items = itemsOf(c, { autoclaves: true, ...wanted });
  if (items === null) return null;
  const [item] = items.items;
  if (item === undefined)
    return items.missing === undefined
      ? null
      : { item: '', said: items.said, missing: { ...items.missing, slot: 'item', form: 'item' } };
  return { item, said: items.said };
}

/** Senses that ask, and say nothing of what is asked. */
export const WH = [
  'wh',
  'anyq',
  'be',
  'have',
  'do',
  'know',
  'see',
  'get',
  'say',
  'show',
  'give',
  'need',
  'want',
  'request',
  'intend',
  'neg',
  'doubt',
  'oblige',
  'remember',
];

/** Words that go with any question and say nothing of what is asked. */
const BESIDE =
  /^(inform|lately|recently|presently|currently|exactly|precisely|story|timeline|time line|line|latest|details|contents|location|overview|rundown|run down|state|date|update|info|information|craic|wise|atm|asap|urgently|quickly|sort|roll|looking|idea|jobs|job|outstanding|monthly|weekly|print|full|complete|entire|whole|gimme|somewhere|around|at all|earth|god|name|location|usable|useable|sorted|grand|show|options|commands|instructions|type|talk|bot|supposed|own|exist|altogether|summary|look|back|readings?|stop|advice|available|can|would|allowed|explain)$/;

/** What stands beside a question, whatever is asked, is explained by it. */
export function useBeside(c: Clause): void {
  for (const [i, part] of c.parts.entries())
    if (part.entity === undefined && BESIDE.test(part.text)) c.use(i);
}

/** True where one of these words stands in the clause. */
export const isWh = (c: Clause, words: RegExp) => c.word(words) >= 0;

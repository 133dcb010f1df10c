import type { Gap } from '../../language/read.ts';
import { fact as factSchema } from '../../reading/fact.ts';
import type { Item } from '../../reading/slots.ts';
import { item as itemSchema } from '../../reading/slots.ts';
import { zoneOf } from '../../record/where.ts';
import type { View } from '../../rules/matter.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import { clockWords } from '../../words/clock-words.ts';
import { itemWords } from '../../words/item-words.ts';
import type { Line } from '../../words/message.ts';
import { factWords } from '../fact-words.ts';

/** What was done, to stand behind "Which scanner" and the like. */
const DONE: Readonly<Record<string, string>> = {
  moved: 'was moved',
  departed: 'left',
  calibrated: 'was calibrated',
  'scan-started': 'is the scan on',
  'scan-finished': 'was the scan on',
  used: 'was used',
  inspected: 'was inspected',
  wiped: 'was wiped down',
  covered: 'has its cover on',
  fitted: 'went on',
  removed: 'came off',
  washed: 'was washed',
  bagged: 'was bagged',
  sent: 'was sent',
  sterile: 'is back sterile',
  held: 'is held',
  released: 'may be used again',
  retired: 'is retired',
  missing: 'is missing',
  found: 'was found',
  fault: 'has the fault',
  repaired: 'was repaired',
  'load-finished': 'has finished',
};

/** The question itself, the important word first. */
export function headOf(gap: Gap, view: View): Line {
  const { about } = gap.unclear;
  const kind = String(gap.draft?.entry.kind ?? '');
  switch (about) {
    case 'scanner':
      return [
        { strong: `Which scanner${kind === 'fitted' ? ' did it go on' : behind(kind)}?` },
        ...unknownWord(gap),
      ];
    case 'tip':
      return [
        { strong: `${kind === 'load-started' ? inLoad(gap, view) : whichTips(gap, kind)}?` },
        ...noSuchTip(gap),
      ];
    case 'load':
      return [{ strong: `Which load${kind === 'load-finished' ? behind(kind) : ''}?` }, ...unknownWord(gap)];
    case 'site':
      return [{ strong: 'At which site?' }, ...unknownWord(gap)];
    case 'room':
      return [{ strong: 'Which room?' }, ...unknownWord(gap)];
    case 'outcome':
      return [{ strong: outcomeHead(gap, kind, view) }];
    case 'certainty':
      return certaintyHead(gap, view);
    case 'time':
      return timeHead(gap, view);
    case 'what':
      return [{ strong: 'I did not follow that.' }, ...unknownWord(gap)];
  }
}

function behind(kind: string): string {
  const done = DONE[kind];
  return done === undefined ? '' : ` ${done}`;
}

/** "Which tips were washed?": several, unless one number was said that is no tip. */
function whichTips({ form, words }: Gap, kind: string): string {
  const several = (form === 'ids' || form === 'items') && (words === undefined || /\s/.test(words));
  const done = behind(kind);
  return several
    ? `Which tips${done
        .replace(/^ was /, ' were ')
        .replace(/^ is /, ' are ')
        .replace(/^ has /, ' have ')}`
    : `Which tip${done}`;
}

function inLoad(gap: Gap, view: View): string {
  const of = itemOf(gap);
  return `Which tips are in ${of === null ? 'it' : itemWords(view.practice, of)}`;
}

function unknownWord({ words }: Gap): Line {
  return words === undefined ? [] : [` I do not know “${words}”.`];
}

function noSuchTip({ words }: Gap): Line {
  return words === undefined ? [] : [` There is no tip ${words} in the practice file.`];
}

function outcomeHead(gap: Gap, kind: string, view: View): string {
  const of = itemOf(gap);
  if (kind === 'spore-test') return 'How did the spore test come out?';
  if (kind === 'inspected') return 'Did it pass the look under the magnifier?';
  if (of === null) return kind === 'autoclave-test' ? 'Did the test pass?' : 'Did it pass?';
  return `Did ${itemWords(view.practice, of)} pass?`;
}

/** What was understood, and that a doubt about something dangerous counts until it is answered. */
function certaintyHead(gap: Gap, view: View): Line {
  const told = factWordsOf(gap, view);
  const of = itemOf(gap);
  const until =
    of === null
      ? ''
      : ` Until you say, I take ${itemWords(view.practice, of)} as ${of.startsWith('scanner:') ? 'not ready' : 'not safe to use'}.`;
  // Nobody was in doubt: "tip 4 is clean" may say less than sterile.
  if (gap.draft?.entry.kind === 'sterile' && gap.unclear.of === undefined)
    return [
      { strong: 'Sterile, from a load that passed?' },
      told === null ? '' : ` ${capital(told)}.`,
      until,
    ];
  return [{ strong: 'Is that certain?' }, told === null ? '' : ` ${capital(told)}.`, until];
}

function timeHead(gap: Gap, view: View): Line {
  const when = gap.draft?.entry.when;
  const at = typeof when === 'string' ? Date.parse(when) : Number.NaN;
  if (Number.isNaN(at)) return [{ strong: 'At what time?' }];
  const site = gap.draft?.entry.site;
  const zone = zoneOf(view.practice, typeof site === 'string' ? site : null);
  const told = factWordsOf(gap, view);
  return [
    { strong: `Was that at ${clockWords(at, view.now, zone)}?` },
    told === null ? '' : ` ${capital(told)}.`,
  ];
}

function factWordsOf(gap: Gap, { practice }: View): string | null {
  const fact = factSchema.safeParse(gap.draft?.entry);
  return fact.success ? factWords(practice, fact.data) : null;
}

function itemOf(gap: Gap): Item | null {
  const item = itemSchema.safeParse(gap.unclear.of);
  return item.success ? item.data : null;
}

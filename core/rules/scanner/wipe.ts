import { ruleValue } from '../../defaults/rule-value.ts';
import { scannerOf } from '../../practice/look-up.ts';
import type { Mark, ScannerState } from '../../record/state.ts';
import { MINUTE, toIso } from '../../time/instant.ts';
import { eachScanner } from '../each.ts';
import type { Matter, View } from '../matter.ts';
import { chatRoomFor } from '../room-of.ts';
import { scannerWords } from '../tips/tip-words.ts';
import { isLateNote } from './late-note.ts';
import { scanWords } from './reason-words.ts';
import { onlyOnce, sayableAt } from './stages.ts';

const RULE = 'wipe';

/** A scanner not wiped down ten minutes after a finished scan: one reminder for the scan. */
export const wipeRule = eachScanner(wipeMatters);

function wipeMatters(view: View, scanner: ScannerState): readonly Matter[] {
  const { practice, said } = view;
  const { dirtySince, site } = scanner;
  const finished = dirtySince?.finished ?? null;
  if (dirtySince === null || finished === null || site === null) return [];
  // Known by the last wipe-down, so that only a wipe-down settles it, however many scans come between.
  const key = `${RULE}|scanner:${scanner.id}|since ${scanner.lastWipe?.entry ?? 'the start'}`;
  const room = chatRoomFor(view, site, () => scanner.lastNoted);
  const posted = said.saidAt(key, 'first') !== null;
  // The next scan has its own warning, and a scanner that is not here cannot be wiped here.
  const moot = scanner.scan !== null || scanner.departed !== null || scanner.missing !== null;
  if (room === null || (!posted && (moot || isLateNote(practice, finished)))) return [];
  const wait = ruleValue(practice, 'wipeAfterMinutes', { site, scanner: scanner.id }) * MINUTE;
  const notes = scannerOf(practice, scanner.id)?.notes.clean ?? [];
  return [
    {
      key,
      rule: RULE,
      about: 'clean',
      site,
      room,
      items: [`scanner:${scanner.id}`],
      stages: moot
        ? onlyOnce(view, site, key, finished.at + wait)
        : wipeStages(view, site, key, finished, wait),
      since: finished.at,
      group: `clean@${site}`,
      get line() {
        return [
          {
            line: [
              { strong: `Wipe down ${scannerWords(practice, scanner.id)}` },
              `: ${scanWords(view, dirtySince)}.`,
            ],
          },
          { points: [['Scanner and base; lens looked at for smears, hairs and dust.']] },
          ...(notes.length === 0 ? [] : [{ points: notes.map((note) => [note]) }]),
        ];
      },
      leads: [],
      tick: (at, by) => [{ kind: 'wiped', when: toIso(at), by, scanner: scanner.id, part: 'all' }],
    },
  ];
}

/** One reminder for the scan; one more for a later scan on the same dirt, ten minutes after it too, and then no more. */
function wipeStages(view: View, site: string, key: string, finished: Mark, wait: number): Matter['stages'] {
  const first = onlyOnce(view, site, key, finished.at + wait);
  const posted = view.said.saidAt(key, 'first');
  if (posted === null || finished.at <= posted || isLateNote(view.practice, finished)) return first;
  const again = view.said.saidAt(key, 'again') ?? sayableAt(view, site, finished.at + wait);
  return [...first, { stage: 'again', at: again }];
}

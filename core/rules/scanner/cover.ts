import { ruleValue } from '../../defaults/rule-value.ts';
import type { Mark, ScannerState, State } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { MINUTE, toIso } from '../../time/instant.ts';
import { today } from '../clock.ts';
import { eachScanner } from '../each.ts';
import type { Matter, View } from '../matter.ts';
import { chatRoomFor } from '../room-of.ts';
import { scannerWords } from '../tips/tip-words.ts';
import { isLateNote } from './late-note.ts';
import { onlyOnce } from './stages.ts';
import { timeAt } from './time-words.ts';

const RULE = 'cover';

/** A scanner used today that has stood for a quarter of an hour with no tip and no cover: one reminder. */
export const coverRule = eachScanner(coverMatters);

function coverMatters(view: View, scanner: ScannerState): readonly Matter[] {
  const { practice, said } = view;
  const { site, usedOn, uncovered } = scanner;
  if (site === null || usedOn === null) return [];
  if (scanner.covered !== null || scanner.tip !== null || scanner.scan !== null) return [];
  const last = lastOf(view.state, scanner);
  if (last === null) return [];
  const since = uncovered ?? last;
  const key = `${RULE}|scanner:${scanner.id}|${spellOf(scanner, since).entry}`;
  const room = chatRoomFor(view, site, () => last);
  if (room === null) return [];
  if (said.saidAt(key, 'first') === null) {
    const away = scanner.departed !== null || scanner.missing !== null;
    if (usedOn !== today(view, zoneOf(practice, site)) || away || isLateNote(practice, last)) return [];
  }
  const wait = ruleValue(practice, 'coverAfterMinutes', { site, scanner: scanner.id }) * MINUTE;
  return [
    {
      key,
      rule: RULE,
      about: 'cover',
      site,
      room,
      items: [`scanner:${scanner.id}`],
      stages: onlyOnce(view, site, key, last.at + wait),
      since: last.at,
      group: `cover@${site}`,
      get line() {
        return [
          {
            line: [
              { strong: `Cover ${scannerWords(practice, scanner.id)}` },
              `: no tip on and no cover noted since ${timeAt(view, site, since.at)}. The cover protects the lens.`,
            ],
          },
        ];
      },
      leads: [],
      tick: (at, by) => [{ kind: 'covered', when: toIso(at), by, scanner: scanner.id }],
    },
  ];
}

/** What a reminder stands for: the scan, or the cover taken off once more since it. */
function spellOf({ lastScan }: ScannerState, since: Mark): Mark {
  return lastScan === null || since.at > lastScan.started.at ? since : lastScan.started;
}

/** The last thing noted of it; its tip coming off is noted of the tip alone. */
function lastOf({ tips, history }: State, { id, lastNoted, lastScan }: ScannerState): Mark | null {
  const tip = lastScan?.tip == null ? undefined : tips.get(lastScan.tip);
  const off = tip?.scanner === null ? tip.lastContact : null;
  if (tip === undefined || off === null || history.fittings.get(tip.id)?.at(-1)?.scanner !== id)
    return lastNoted;
  return lastNoted === null || off.at > lastNoted.at ? off : lastNoted;
}

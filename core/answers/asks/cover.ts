import type { AskOf } from '../../reading/ask.ts';
import type { ScannerState } from '../../record/state.ts';
import { capital, scannerWords } from '../../rules/tips/tip-words.ts';
import { idOf } from '../../words/item-words.ts';
import type { Line, Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { scannersAt } from '../scanners-at.ts';
import { whenBy } from '../when-by.ts';

/** "Is the cover on green?": on or not, since when; of every scanner asked about where none is named, those without it first. */
export function answerCover({ item, site }: AskOf<'cover'>, view: AskView): Answer {
  const all = item === undefined ? scannersAt(site, view) : [view.state.scanners.get(idOf(item))];
  const scanners = all.flatMap((scanner) => scanner ?? []);
  const sorted = scanners.toSorted((one, other) => Number(isOn(one)) - Number(isOn(other)));
  const told = sorted.map((scanner): Line => coverLine(scanner, view));
  const unknown: Line = [{ strong: 'No such scanner' }, ' in the practice file.'];
  const points = told.length === 0 ? [unknown] : told;
  const message: Message = points.length === 1 ? points.map((line) => ({ line })) : [{ points }];
  return { about: 'answer', message, items: sorted.map(({ id }) => `scanner:${id}` as const) };
}

function isOn({ covered }: ScannerState): boolean {
  return covered !== null;
}

function coverLine(scanner: ScannerState, view: AskView): Line {
  const { covered, uncovered, tip, tipFitted, site } = scanner;
  const name = { strong: capital(scannerWords(view.practice, scanner.id)) };
  if (covered !== null) return [name, `: cover on, since ${whenBy(covered, site, view)}.`];
  if (tip !== null) {
    const since = tipFitted === null ? '' : `, since ${whenBy(tipFitted, site, view)}`;
    return [name, ': ', { strong: 'no cover' }, `: tip ${tip} is on${since}.`];
  }
  const off = uncovered === null ? '' : `; it came off ${whenBy(uncovered, site, view)}`;
  return [name, ': ', { strong: 'no cover noted' }, `${off}.`];
}

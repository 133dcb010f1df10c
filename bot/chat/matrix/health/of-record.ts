import type { Store } from '../../../store/store.ts';
import type { Finding, ShowTime } from './finding.ts';

/** So many posts that wait mean that they do not go out. */
const MANY_UNSENT = 20;

/** What the record's own folder says: how long it is, what is unsent, what was set aside. `digits`: how many of the head hash. */
export function ofRecord(store: Store, show: ShowTime, digits: number): readonly Finding[] {
  const unsent = store.transport.unsent();
  const aside = store.transport.asideList();
  const turn = Number(unsent[0]?.key.split('/')[0]);
  const since = Number.isInteger(turn) ? (store.line(turn)?.at ?? null) : null;
  const { n, hash } = store.head;
  return [
    { of: 'record', good: true, line: `The record has ${n} lines; head ${hash.slice(0, digits)}` },
    {
      of: 'unsent',
      good: unsent.length < MANY_UNSENT,
      line:
        unsent.length === 0
          ? 'Everything was sent'
          : `${unsent.length} not sent yet${since === null ? '' : `, the oldest since ${show(since)}`}`,
    },
    {
      of: 'aside',
      good: aside.length === 0,
      line:
        aside.length === 0
          ? 'No note was set aside'
          : `${aside.length === 1 ? '1 note was' : `${aside.length} notes were`} set aside`,
      todo: 'Type again what it was about; whoever looks after the program wants to know.',
    },
  ];
}

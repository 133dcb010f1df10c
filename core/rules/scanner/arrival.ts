import type { Entry } from '../../record/entry.ts';
import type { Arrival, ScannerState } from '../../record/state.ts';
import { lines } from '../../words/message.ts';
import { placeWords } from '../../words/place-words.ts';
import type { View } from '../matter.ts';
import { whenOpen } from '../quiet.ts';
import type { Speech } from '../speech.ts';
import { capital, inWords, scannerWords } from '../tips/tip-words.ts';
import { notesOf } from './notes-of.ts';
import { timeAt } from './time-words.ts';

/** Common practice for setting up a shared scanner; the maker's instructions come before it. */
export const SET_UP_STEPS: readonly string[] = [
  'Base steady, so that the scanner goes in safely and lifts out easily.',
  'Cable long enough to reach, and off the floor.',
  'Each plug only where the maker says, never into a network socket or switch.',
];

/** Two posts for scanners that have come to another site: how to set them up, and until when they settle. */
export function arrivalSpeeches(entry: Entry, view: View): readonly Speech[] {
  if (entry.fact.kind !== 'moved' && entry.fact.kind !== 'found') return [];
  const come = [...view.state.scanners.values()].flatMap((scanner) => {
    const { arrived } = scanner;
    return arrived !== null && arrived.mark.entry === entry.id ? [{ scanner, arrived }] : [];
  });
  const [first] = come;
  if (first === undefined) return [];
  const items = come.map(({ scanner }) => `scanner:${scanner.id}`);
  return [
    {
      about: 'set-up',
      items,
      message: setUp(
        view,
        come.map(({ scanner }) => scanner),
        first.arrived.site,
      ),
      mentions: [],
    },
    {
      about: 'settle',
      items,
      message: lines(...come.map((each) => settles(view, each.scanner, each.arrived))),
      mentions: [],
    },
  ];
}

function setUp({ practice }: View, scanners: readonly ScannerState[], site: string): Speech['message'] {
  const names = inWords(scanners.map(({ id }) => scannerWords(practice, id)));
  return [
    { line: [{ strong: `Set up ${names}` }, ` at ${placeWords(practice, site, null)}:`] },
    { steps: [...SET_UP_STEPS, ...notesOf(practice, scanners, 'set-up')].map((step) => [step]) },
  ];
}

function settles(view: View, { id }: ScannerState, arrived: Arrival): string {
  const { practice, state, now } = view;
  const { site, settledBy, settleMinutes } = arrived;
  const name = capital(scannerWords(practice, id));
  if (settledBy <= now)
    return `${name} has had its time to settle (${settleMinutes} min): calibrate it now, it is due.`;
  const asked = whenOpen(practice, state, site, settledBy);
  const then =
    asked === settledBy
      ? 'then'
      : `${timeAt(view, site, asked)}, as ${placeWords(practice, site, null)} is shut until then`;
  return `${name} settles until ${timeAt(view, site, settledBy)} (${settleMinutes} min); the request to calibrate comes ${then}.`;
}

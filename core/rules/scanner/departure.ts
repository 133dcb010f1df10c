import type { Entry } from '../../record/entry.ts';
import type { ScannerState } from '../../record/state.ts';
import type { View } from '../matter.ts';
import type { Speech } from '../speech.ts';
import { inWords, scannerWords } from '../tips/tip-words.ts';
import { notesOf } from './notes-of.ts';

/** Common practice for taking a scanner along; the maker's instructions come before it. */
export const PACK_STEPS: readonly string[] = [
  'Cover on.',
  'Calibration tip along.',
  'Cable coiled.',
  'Not left in a hot or cold car.',
];

/** What to pack, when scanners have just left or are leaving; said once a journey. */
export function departureSpeeches(entry: Entry, view: View): readonly Speech[] {
  if (entry.fact.kind !== 'departed') return [];
  const { practice, state } = view;
  const gone = [...state.scanners.values()].filter(({ departed }) => departed?.mark.entry === entry.id);
  if (gone.length === 0) return [];
  const names = inWords(gone.map(({ id }) => scannerWords(practice, id)));
  const notes = notesOf(practice, gone, 'pack');
  const steps = [...gone.flatMap((scanner) => wipeFirst(view, scanner)), ...PACK_STEPS, ...notes];
  const message: Speech['message'] = [
    { line: [{ strong: `Pack ${names}` }, ':'] },
    { points: steps.map((step) => [step]) },
  ];
  return [{ about: 'set-up', items: gone.map(({ id }) => `scanner:${id}`), message, mentions: [] }];
}

function wipeFirst({ practice }: View, { id, dirtySince }: ScannerState): readonly string[] {
  return dirtySince === null
    ? []
    : [`Wiped down first: ${scannerWords(practice, id)} is not, since its last scan.`];
}

import { scannerOf } from '../../practice/look-up.ts';
import type { Practice, ScannerNote } from '../../practice/practice.ts';
import { capital, scannerWords } from '../tips/tip-words.ts';

/**
 * What the practice file wants said of these scanners, each note once; where there are several and a note is not of all
 * of them, with the names of those that it is of.
 */
export function notesOf(
  practice: Practice,
  scanners: readonly { readonly id: string }[],
  sort: ScannerNote,
): readonly string[] {
  const ofNote = new Map<string, string[]>();
  for (const { id } of scanners)
    for (const note of scannerOf(practice, id)?.notes[sort] ?? [])
      ofNote.set(note, [...(ofNote.get(note) ?? []), id]);
  return [...ofNote].map(([note, ids]) => {
    if (ids.length === scanners.length) return note;
    return `${capital(ids.map((id) => scannerWords(practice, id)).join(' and '))}: ${note}`;
  });
}

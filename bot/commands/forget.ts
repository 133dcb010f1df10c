import { parseArgs } from 'node:util';
import type { Practice } from '../../core/practice/practice.ts';
import { PlainError } from '../plain-error.ts';
import { openStore, type Store } from '../store/store.ts';
import { recordFolder } from '../store/which-folder.ts';
import { practiceOf } from './export.ts';
import { stillHeld } from './still-held.ts';
import type { CommandIo } from './verify.ts';

const USAGE =
  'forget needs one of: --person NAME (as the record has it, such as @tom:example.org), --line NUMBER';

/**
 * `forget (--person NAME | --line NUMBER) [--store FOLDER] [--yes]`: erases a person's name wherever it stands, or what
 * was typed and said in one line of the record. Without `--yes` it only says what would be done. The bot must not be
 * running. Exit code: 0, or 1 when nothing was done.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const text = { type: 'string' } as const;
  const options = { person: text, line: text, store: text, yes: { type: 'boolean' } } as const;
  const { values } = parseArgs({ args, options });
  const what = whatOf(values.person, values.line);
  const folder = recordFolder(values.store);
  const store = openStore(folder);
  try {
    if (store.readOnly !== null) throw new PlainError(store.readOnly);
    if ('line' in what && (what.line < 1 || what.line > store.head.n))
      throw new PlainError(`There is no line ${what.line}: the record has lines 1 to ${store.head.n}.`);
    const hint = 'person' in what ? otherName(store, what.person) : null;
    if (values.yes !== true) {
      const gone =
        'line' in what ? `What was typed and said in line ${what.line}` : `The name ${what.person}`;
      io.out(`${gone} would be erased for good; what was done stays in the record, under a pseudonym.`);
      if (hint !== null) io.out(hint);
      io.out('Nothing was changed: run it again with --yes.');
      return 1;
    }
    const { pseudonym, texts } = store.forget(what);
    io.out(`${texts} ${texts === 1 ? 'text was' : 'texts were'} erased or lost the name.`);
    if ('person' in what)
      io.out(
        pseudonym === null
          ? 'No line of the record names that person. Names are spelt as the chat spells them.'
          : `The record now calls that person ${pseudonym}. Take the name out of the practice file too.`,
      );
    if (hint !== null) io.out(hint);
    io.out('The record still verifies.');
    for (const line of stillHeld(folder)) io.out(line);
    return 0;
  } finally {
    store.close();
  }
}

/** People are known by what the chat calls them; whoever asks may know the name in the practice file alone. */
function otherName(store: Store, name: string): string | null {
  const same = (other: string | null): boolean => other?.toLowerCase() === name.trim().toLowerCase();
  const person = peopleOf(store).find(({ name: own, id }) => same(own) || same(id));
  if (person === undefined || person.id === null) return null;
  const other = same(person.id) ? person.name : person.id;
  return `The practice file has "${other}" for that person too: forget that name as well.`;
}

/** Nobody, where the practice file does not read any more. */
function peopleOf(store: Store): Practice['people'] {
  try {
    return practiceOf(store).people;
  } catch (error) {
    if (error instanceof PlainError) return [];
    throw error;
  }
}

function whatOf(person: string | undefined, line: string | undefined): { person: string } | { line: number } {
  if (person !== undefined && line === undefined && person.trim() !== '') return { person };
  if (line !== undefined && person === undefined && /^\d+$/.test(line)) return { line: Number(line) };
  throw new PlainError(USAGE);
}

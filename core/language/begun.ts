import { type Draft, saidIn } from './clauses.ts';
import { hasSort, meantWord } from './part.ts';

const GO = /^(go|away we go|off we go)$/;
const STARTED = meantWord('started', { sort: 'verb', tag: 'start', form: 'd' });

/** "Go: Ruby, tip 3, surgery 1", "Wanda on, tip 7, surg 2, go": a scan begins where nothing but what it is with is said. */
export function scanBegun(drafts: readonly Draft[]): readonly Draft[] | null {
  const go = drafts.filter((one) =>
    GO.test(
      saidIn(one)
        .map((p) => p.text)
        .join(' '),
    ),
  );
  const [one, more] = go;
  if (
    one === undefined ||
    more !== undefined ||
    drafts.some((d) => d.sentence !== one.sentence || d.question)
  )
    return null;
  const rest = drafts.filter((d) => d !== one);
  const parts = rest.flatMap((d) => d.parts.filter((p) => !p.mark && p.text !== 'on'));
  const things = parts.filter((p) => p.entity !== undefined);
  const plain =
    rest.every((d) => d.sort === 'entities') &&
    parts.every((p) => p.entity !== undefined || hasSort(p, 'glue'));
  const tipped =
    things.some((p) => p.entity?.is === 'tips') && things.some((p) => p.entity?.is === 'scanner');
  return plain && tipped ? [{ ...one, parts: [STARTED, ...parts], joint: '', sort: 'act' }] : null;
}

import type { Clause, NoteScope } from './clause.ts';
import type { Draft } from './clauses.ts';
import { TROUBLE } from './lexicon/trouble.ts';
import type { Output } from './output.ts';
import { hasSort, hasTag, type Part } from './part.ts';
import { isReason } from './segments.ts';

/** The cause given after a hold or a retirement: behind "because", or a fragment with no verb of its own ("cracked mirror"). */
export function reasonAfter(
  drafts: readonly Draft[],
  at: number,
  clause: Clause,
  scope: NoteScope,
): { text: string; taken: number } | null {
  const inside = reasonInside(clause, scope);
  if (inside !== null) return { text: inside, taken: 0 };
  const next = drafts[at + 1];
  if (next === undefined || next.quoted) return null;
  const joined =
    isReason(next.joint) ||
    next.joint === '-' ||
    next.joint === ':' ||
    next.joint === ',' ||
    next.joint === '(' ||
    next.joint === 'then' ||
    next.joint === '';
  if (!joined) return null;
  const because = isReason(next.joint) && drafts[at]?.sentence === next.sentence;
  // "Not to be used, the cable's frayed": a clause of its own is a fault too.
  if (!because && tellsFault(next.parts)) return { text: wordsOf(next.parts, scope), taken: 0 };
  if (!because && !isFragment(next.parts)) return null;
  return { text: wordsOf(next.parts, scope), taken: 1 };
}

/** "Binned tip 6 due to a cracked mirror", "for fogging". */
function reasonInside(clause: Clause, scope: NoteScope): string | null {
  const at = clause.word(/^(due to|due|because of|on account of|owing to|thanks to|as its|reason)$/);
  const cause =
    at >= 0
      ? at
      : clause.parts.findIndex(
          (p, i) =>
            p.text === 'for' && TROUBLE.some((tag) => tag !== 'repair' && hasTag(clause.parts[i + 1], tag)),
        );
  const worn =
    cause < 0
      ? clause.parts.findIndex(
          (p, i) =>
            p.text === 'with' &&
            clause.parts.slice(i + 1, i + 4).some((q) => TROUBLE.some((tag) => hasTag(q, tag))),
        )
      : cause;
  if (worn < 0 || worn + 1 >= clause.parts.length) return null;
  const rest = clause.parts.slice(worn + 1);
  return rest.some((p) => p.entity?.is === 'tips') ? null : wordsOf(rest, scope).replace(/^to /, '');
}

const CAUSES =
  /^(waiting|awaiting|engineer|the engineer|worn|worn out|broken|past it|faulty|error|leaking|recall)$/;

function isFragment(parts: readonly Part[]): boolean {
  if (countsUses(parts)) return true;
  if (parts.length > 8 || parts.some((p) => p.entity !== undefined && p.entity.is !== 'time')) return false;
  const trouble = parts.some(
    (p) => p.entity === undefined && (CAUSES.test(p.text) || TROUBLE.some((tag) => hasTag(p, tag))),
  );
  if (parts.some((p) => hasTag(p, 'neg')) && parts.some((p) => hasTag(p, 'use'))) return false;
  const finite = parts.some((p) =>
    /^(is|are|was|were|'s|it's|its|has|have|i|we|and|that's|will|need|needs|so|please|pls)$/.test(p.text),
  );
  return trouble && !finite && !parts.every((p) => hasSort(p, 'glue') && !CAUSES.test(p.text));
}

const SIGNS = ['crack', 'scratch', 'tear', 'fog', 'sick', 'dead', 'cold', 'disconnect', 'fray', 'fail'];

/** "The cable's frayed", "connection breaks all the time": a part of the thing, and what is wrong with it as a verb says it. */
function tellsFault(parts: readonly Part[]): boolean {
  const said = parts.filter((p) => !p.mark);
  if (said.length > 8 || said.some((p) => p.entity !== undefined && p.entity.is !== 'time')) return false;
  const subject = said.findIndex(
    (p) =>
      p.entity === undefined &&
      hasSort(p, 'noun') &&
      p.senses.every((s) => s.sort === 'noun' || s.form === 'n' || s.form === 'b'),
  );
  const verb = said.findIndex(
    (p, i) =>
      i > subject &&
      (p.senses.some((s) => s.sort === 'verb' && s.form === 's' && SIGNS.includes(s.tag)) ||
        (/^('s|is|are|has)$/.test(said[i - 1]?.text ?? '') && SIGNS.some((tag) => hasTag(p, tag)))),
  );
  return subject >= 0 && verb > subject;
}

/** "Retired: 150 cycles", "binned - at its limit". */
function countsUses(parts: readonly Part[]): boolean {
  const said = parts.filter((p) => !p.mark);
  const figure = said.some(
    (p) =>
      p.entity?.is === 'number' ||
      (p.entity?.is === 'tips' && !p.entity.named && p.entity.ids.length === 0) ||
      /^limit$/.test(p.text),
  );
  return (
    said.length <= 6 && figure && said.some((p) => /^(cycles|uses|goes|runs|rounds|limit)$/.test(p.text))
  );
}

/** The cause said just before as a fault of the same thing. */
export function reasonBefore(out: Output, entry: Record<string, unknown>): string | null {
  const items = Array.isArray(entry.items)
    ? entry.items
    : Array.isArray(entry.tips)
      ? entry.tips.map((id) => `tip:${id}`)
      : [];
  const [item] = items;
  return typeof item === 'string' ? out.faultWords(item) : null;
}

export function wordsOf(parts: readonly Part[], scope: NoteScope): string {
  const first = parts.find((p) => !p.mark && !/^(the|it|its|it's|'s|is|a|an)$/.test(p.text)) ?? parts[0];
  const last = parts[parts.length - 1];
  if (first === undefined || last === undefined) return '';
  return scope.note.slice(scope.offset(first)[0], scope.offset(last)[1]).replace(/\s+/g, ' ').trim();
}

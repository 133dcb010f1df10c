import type { Clause } from '../clause.ts';
import { made } from '../frames/frame.ts';
import type { Part } from '../part.ts';
import type { Made } from '../result.ts';
import { type ActText, textOf } from './act-text.ts';
import { plainId } from './item-id.ts';

/** Words that may stand beside the answer to "which one?". */
const BESIDE: ReadonlySet<string> = new Set(
  "the|please|pls|number|option|one|no|no.|ta|thanks|x|it's|its|that|was|it|it was|yes|yeah|sorry|that one|i meant|in|at|to|xx|um|oh|tip|scanner|'s|that's|choice|erm|of|err|er".split(
    '|',
  ),
);

/** "2nd", "the 3rd one". */
const PLACE = /^(?:the )?(\d)(?:st|nd|rd|th)(?: one)?(?: please| pls| ta)?$/;
/** Marks of figures and code: a sum or a line of a listing is no choice. */
const NO_CHOICE = /[=<>|%$£€@~^*+[\]{}\\]/;

/** "The 2nd one please" has no more parts than this. */
const MOST_PARTS_OF_PLACE = 8;

/** A number or a name and nothing more: the answer to "which one?". */
export function pick(c: Clause, text: ActText): Made | null {
  if (c.parts.some((p) => p.text === '->' || p.text === 'on' || (p.mark && NO_CHOICE.test(p.text))))
    return null;
  const place = c.parts.length <= MOST_PARTS_OF_PLACE ? PLACE.exec(text.typed)?.[1] : undefined;
  if (place !== undefined) return made('pick', { choice: place });
  const solids = solidsIn(c);
  if (solids === 'many' || ILL_TYPED.test(c.scope.note.slice(...spanOf(c)))) return null;
  const [solid] = solids;
  const choice =
    solid === undefined ? oneAlone(c) : (figureOf(c, solid) ?? nameOf(solid) ?? wordOf(c, solid));
  return choice === null ? null : made('pick', { choice });
}

/** A part of a number, a code, letters held down: no choice. */
const ILL_TYPED = /\d[.,:]\d|\d{6}|^\W*:|(\p{L})\1\1/u;

/** What is not said beside a choice; more than one thing is none. */
function solidsIn(c: Clause): readonly Part[] | 'many' {
  const solids: Part[] = [];
  for (const part of c.parts) {
    if (part.entity === undefined && (part.mark || BESIDE.has(textOf(part)))) continue;
    if (solids.push(part) > 1) return 'many';
  }
  return solids;
}

function spanOf(c: Clause): readonly [number, number] {
  const [first] = c.parts;
  const last = c.parts.at(-1);
  if (first === undefined || last === undefined) return [0, 0];
  return [c.scope.offset(first)[0], c.scope.offset(last)[1]];
}

/** "One" said as a number. */
function oneAlone(c: Clause): string | null {
  if (c.parts.length > 3 || c.parts.some((p) => /^(the|that|it)$/.test(p.text))) return null;
  return numberOf(c.parts.find((p) => numberOf(p) !== null));
}

function numberOf(part: Part | undefined): string | null {
  return part?.senses.find((s) => s.tag === 'number')?.ref ?? null;
}

/** The figures as they were typed. */
function figureOf(c: Clause, part: Part): string | null {
  const typed = c.scope.note.slice(...c.scope.offset(part));
  if (/^#\d+$/.test(typed)) return typed.slice(1);
  const { entity } = part;
  if (entity?.is !== 'tips' || entity.named || entity.ids.length + entity.unknown.length !== 1) return null;
  const figures = typed.replace(/\D/g, '');
  return figures === '' ? (entity.ids[0] ?? entity.unknown[0] ?? null) : figures;
}

function nameOf(part: Part): string | null {
  const id = plainId(part.entity);
  const unknown = part.entity?.is === 'tips' && part.entity.unknown.length > 0;
  return id === null || id === 'many' || unknown ? null : id;
}

function wordOf(c: Clause, part: Part): string | null {
  if (part.entity !== undefined) return null;
  const place = ['first', 'second', 'third'].indexOf(part.text);
  if (place >= 0 && c.parts.length <= 3) return String(place + 1);
  if (/^(passed|failed)$/.test(part.text) && c.parts.length <= 2) return part.text;
  return numberOf(part);
}

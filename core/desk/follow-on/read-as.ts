import type { Pronoun } from '../../language/follow-on/pronoun.ts';
import type { Why } from '../../language/read.ts';
import type { Fact } from '../../reading/fact.ts';
import type { Item } from '../../reading/slots.ts';
import { itemsOf } from '../../record/items-of.ts';
import type { State } from '../../record/state.ts';
import { inWords, tipsInWords } from '../../rules/tips/tip-words.ts';
import { idOf, itemWords } from '../../words/item-words.ts';
import type { Session } from '../session.ts';
import { fits } from './loosening.ts';
import type { Leaning } from './told.ts';

/** What the note says with one thing, or several, in the place of "it" or "them". */
export interface Meant {
  readonly items: readonly Item[];
  readonly facts: readonly Fact[];
  readonly fits: boolean;
  /** Where it went is not said but filled in. */
  readonly placeUnsaid: boolean;
}

/** "Left it in surgery 1", "it has arrived": longer notes with no site in them are talk. */
const SHORT = 5;
const SHORTEST = 3;
const UNPLACED = /^arriv|\b(?:here|there|back)$/i;
/** Of a tip that has no plug, no heater and no light of its own. */
const OF_SCANNERS = new Set(['connection', 'cable', 'heating']);

/** How the note reads with these things named; nothing where that is no plain fact of just these. */
export function readAs(
  session: Session,
  note: Leaning,
  { saying, words }: Pronoun,
  items: readonly Item[],
): readonly Meant[] {
  const { at, from, room } = note;
  const { reading, why } = session.read(saying(nameOf(session, items)), { at, from, room });
  const { facts, asks, acts, plans, unclear } = reading;
  if (facts.length === 0 || asks.length + acts.length + plans.length + unclear.length > 0) return [];
  const spoken = new Set(facts.flatMap(itemsOf));
  const isOfThese = items.every((item) => spoken.has(item));
  const eachIs = facts.every((fact) => itemsOf(fact).some((item) => items.includes(item)));
  if (!isOfThese || !eachIs) return [];
  const agrees = facts.every((fact) => fits(fact, session.timeline.state));
  if (
    facts.some((fact) => fact.kind === 'fault' && fact.item.startsWith('tip:') && OF_SCANNERS.has(fact.sort))
  )
    return [];
  // Something is found that was lost; whatever else people find is talk.
  if (!agrees && facts.some(({ kind }) => kind === 'found')) return [];
  // "It says here" is no move.
  const placeUnsaid = why.some((one) => leavesPlace(session, facts, one));
  const byRoom = why.some(({ slots: { room: said } }) => said !== undefined);
  if (placeUnsaid && words > (byRoom ? SHORT : SHORTEST)) return [];
  return [{ items, facts, fits: agrees, placeUnsaid }];
}

/** "It's arrived" says no place, "in surgery 1" no site: whoever travels with it may type in either site's chat room. */
function leavesPlace({ timeline }: Session, facts: readonly Fact[], { slots }: Why): boolean {
  const { site, room } = slots;
  if (site === undefined) return false;
  if ('filledIn' in site || UNPLACED.test(site.said)) return true;
  const byRoom = room !== undefined && 'said' in room && room.said === site.said;
  return (
    byRoom && facts.some((fact) => fact.kind === 'moved' && !areAt(timeline.state, fact.items, fact.site))
  );
}

function areAt({ tips, scanners }: State, items: readonly Item[], site: string): boolean {
  return items.every((item) => {
    const id = idOf(item);
    const known = item.startsWith('scanner:') ? scanners.get(id)?.site : tips.get(id)?.site;
    return known === site;
  });
}

function nameOf({ practice }: Session, items: readonly Item[]): string {
  return items.every((item) => item.startsWith('tip:'))
    ? tipsInWords(items.map(idOf))
    : inWords(items.map((item) => itemWords(practice, item)));
}

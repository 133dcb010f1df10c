import { ruleValue } from '../../defaults/rule-value.ts';
import type { Item } from '../../reading/slots.ts';
import type { LoadState, Mark } from '../../record/state.ts';
import { sitesOfRoom, zoneOf } from '../../record/where.ts';
import { MINUTE } from '../../time/instant.ts';
import { clockWords } from '../../words/clock-words.ts';
import { loadItem, loadWords } from '../../words/load-words.ts';
import { lines, type Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { About } from '../about.ts';
import type { Matter, View } from '../matter.ts';
import { whenOpen } from '../quiet.ts';
import { chatRoomFor } from '../room-of.ts';
import { inWords, scannerWords } from '../tips/tip-words.ts';

/** Something that someone was not sure of and nobody has answered. */
interface Doubt {
  readonly item: Item;
  /** What names it for good: a load's number may come again. */
  readonly id: string;
  readonly mark: Mark;
  readonly site: string | null;
  readonly about: About;
  readonly name: string;
  readonly what: string;
}

/**
 * Rule `doubt`: a doubt about a load, a tip or a scanner that nobody has answered by the time its question lapsed
 * (`questionMinutes`): asked once more, and then it stays in the brief. Until answered it counts as not sterile, not ready.
 */
export function doubtsWaiting(view: View): readonly Matter[] {
  return [...doubts(view)].flatMap((doubt) => matterOf(view, doubt) ?? []);
}

function* doubts({ practice, state }: View): Generator<Doubt> {
  const loads = new Map<string, LoadState>();
  for (const tip of state.tips.values()) {
    // A doubted load matters through the tips that stand under it; the other loads need not be looked at.
    const load = tip.load === null ? undefined : state.loads.get(tip.load);
    if (load?.status === 'doubted') loads.set(load.key, load);
    if (tip.doubt === null || tip.retired !== null) continue;
    const what = `Not to be used until someone says “tip ${tip.id} is sterile” or it has been through a load.`;
    yield {
      item: `tip:${tip.id}`,
      id: `tip:${tip.id}`,
      mark: tip.doubt,
      site: tip.site,
      about: 'tips',
      name: `tip ${tip.id}`,
      what,
    };
  }
  for (const load of loads.values()) {
    if (load.doubt === null) continue;
    const { key, doubt, site, number, tips } = load;
    const what = `Tips ${inWords(tips)} are not sterile until someone types its result: “load ${number} passed” or “failed”.`;
    yield {
      item: loadItem(load),
      id: `load:${key}`,
      mark: doubt,
      site,
      about: 'load',
      name: loadWords(practice, load),
      what,
    };
  }
  for (const { id, doubt, site } of state.scanners.values()) {
    if (doubt === null) continue;
    const what = 'Not ready until someone calibrates it or says that it passed.';
    yield {
      item: `scanner:${id}`,
      id: `scanner:${id}`,
      mark: doubt,
      site,
      about: 'calibration',
      name: scannerWords(practice, id),
      what,
    };
  }
}

function matterOf(view: View, { item, id, mark, site: at, about, name, what }: Doubt): Matter | null {
  const { practice, state } = view;
  const site = at ?? practice.sites[0]?.id ?? null;
  if (site === null) return null;
  // Asked where the doubt was noted, unless that room belongs to another site, with hours of its own.
  const here = mark.room !== '' && sitesOfRoom(practice, mark.room).includes(site);
  const room = here ? mark.room : chatRoomFor(view, site, () => mark);
  if (room === null || room === '') return null;
  const asked = mark.noted + ruleValue(practice, 'questionMinutes') * MINUTE;
  return {
    key: `doubt|${id}|${mark.entry}`,
    rule: 'doubt',
    about,
    site,
    room,
    items: [item],
    stages: [{ stage: 'first', at: whenOpen(practice, state, site, asked) }],
    since: mark.at,
    group: `doubt@${site}`,
    get line() {
      return words(view, site, mark, name, what);
    },
    leads: [],
  };
}

function words({ practice, now }: View, site: string, mark: Mark, name: string, what: string): Message {
  const at = clockWords(mark.at, now, zoneOf(practice, site));
  const by = mark.by === null ? '' : ` (${nameOf(practice, mark.by)})`;
  return lines([{ strong: `In doubt: ${name}` }, `, ${at}${by}. ${what}`]);
}

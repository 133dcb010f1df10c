import { scannerOf } from '../../practice/look-up.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Item } from '../../reading/slots.ts';
import type { Refused } from '../../record/finding.ts';
import { loadMeant } from '../../record/load-key.ts';
import type { Hold } from '../../record/state.ts';
import { autoclaveWords, loadWords } from '../../words/load-words.ts';
import { lines, type Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { About } from '../about.ts';
import type { View } from '../matter.ts';
import { fromSignedDevice, isSenior, leadIds, seniorsInWords, whoMay } from '../rights.ts';
import type { Speech } from '../speech.ts';
import { capital } from '../tips/tip-words.ts';

/** The author may not say this of it, or nobody may: nothing changes, and who may is said. */
export function speakRefused(finding: Refused, view: View): readonly Speech[] {
  const { what, item, items } = finding;
  if (finding.why === 'not-signed') {
    const about = what === 'close-incident' ? 'incident' : aboutOf(item);
    const message = fromSignedDevice(notSigned(finding, view));
    return [{ about, items, message, mentions: [] }];
  }
  if (what === 'close-incident') {
    const message = lines([{ strong: 'The incident stays open.' }, ` ${may(view.practice, 'close it')}`]);
    return [{ about: 'incident', items, message, mentions: [] }];
  }
  if (what === 'load-correction') return [correction(finding, view)];
  const name = item === null ? 'it' : itemWords(view, item);
  return [{ about: aboutOf(item), items, message: notReleased(finding, view, name), mentions: [] }];
}

/** Kept as a question to the lead, who answers it by typing the result. */
function correction({ item, items, mark }: Refused, view: View): Speech {
  const load = item === null ? undefined : loadMeant(view.state, numberOf(item));
  const name = load === undefined ? 'the load' : loadWords(view.practice, load);
  const result = `load ${load?.number ?? ''} passed`.replace('  ', ' ');
  const message = lines(
    [
      { strong: `${capital(name)} stays ${load?.status === 'failed' ? 'failed' : 'as it was'}.` },
      ` ${nameOf(view.practice, mark.from)} says that it passed after all.`,
    ],
    `${capital(seniorsInWords(view.practice))}: if that is right, type “${result}”.`,
  );
  return { about: 'question', items, message, mentions: leadIds(view.practice) };
}

/** Who may do it is settled; only the device was not one that its owner has verified. */
function notSigned({ what, item }: Refused, view: View): string {
  if (what === 'close-incident') return 'The incident stays open.';
  const name = item === null ? 'it' : itemWords(view, item);
  return `${capital(name)} ${what === 'load-correction' ? 'stays as it was' : 'is not released'}.`;
}

function notReleased({ why, item }: Refused, view: View, name: string): Message {
  const { practice } = view;
  const start = { strong: `${capital(name)} is not released.` };
  switch (why) {
    case 'not-signed':
      return fromSignedDevice(`${capital(name)} is not released.`);
    case 'not-allowed':
      return lines([start, ` ${placer(view, item)}${may(practice, 'release it')}`]);
    case 'load-failed':
      return lines([start, ' The load failed or was recalled; nobody may release it. Run its tips again.']);
    case 'needs-pass':
      return lines([start, ' It was dropped, and is held until it passes its calibration.']);
    case 'needs-clear-test':
      return lines([start, ' After a positive spore test it is out of service until a repeat is clear.']);
    case 'nothing-to-release':
      return lines([{ strong: `Nothing to release: ${name} is not held.` }, ' Nothing was changed.']);
  }
}

function may(practice: Practice, todo: string): string {
  return `${capital(whoMay(practice))} may ${todo}.`;
}

/** Who placed the hold, where that person may take it off too. */
function placer({ practice, state }: View, item: Item | null): string {
  const held = (holdsOf(state, item) ?? []).find(({ ends }) => ends === 'placer');
  if (held === undefined || held.mark.from === '' || isSenior(practice, held.mark.from)) return '';
  return `${nameOf(practice, held.mark.from)}, who placed the hold, may release it. `;
}

function holdsOf(state: View['state'], item: Item | null): readonly Hold[] | undefined {
  if (item === null) return undefined;
  const id = numberOf(item);
  if (item.startsWith('tip:')) return state.tips.get(id)?.holds;
  if (item.startsWith('scanner:') || item.startsWith('calibration-tip:'))
    return state.scanners.get(id)?.holds;
  return item.startsWith('autoclave') ? state.autoclaves.get(id)?.holds : undefined;
}

function itemWords({ practice, state }: View, item: Item): string {
  const id = numberOf(item);
  if (item.startsWith('tip:')) return `tip ${id}`;
  if (item.startsWith('scanner:')) return scannerOf(practice, id)?.name ?? `scanner ${id}`;
  if (item.startsWith('calibration-tip:')) return `calibration tip of ${scannerOf(practice, id)?.name ?? id}`;
  if (item.startsWith('autoclave')) return autoclaveWords(practice, id);
  const load = loadMeant(state, id);
  return load === undefined ? `load ${id}` : loadWords(practice, load);
}

/** What stands behind the colon; empty for the bare `autoclave`. */
function numberOf(item: Item): string {
  const colon = item.indexOf(':');
  return colon < 0 ? '' : item.slice(colon + 1);
}

function aboutOf(item: Item | null): About {
  if (item?.startsWith('tip:')) return 'tips';
  return item?.startsWith('load:') || item?.startsWith('autoclave') ? 'load' : 'caution';
}

import type { Practice } from '../practice/practice.ts';
import type { Said } from '../record/entry.ts';
import { placeWords } from '../rules/tips/place-words.ts';
import { inWords, scannerWords, tipsInWords } from '../rules/tips/tip-words.ts';
import { itemWords } from './item-words.ts';

/** What happened, in a few plain words that begin with what it happened to: "tip 4 sent to autoclave". */
export function factWords(practice: Practice, fact: Said): string {
  const scanner = 'scanner' in fact && fact.scanner !== undefined ? scannerWords(practice, fact.scanner) : '';
  const tips =
    'tips' in fact && fact.tips !== undefined && fact.tips.length > 0 ? tipsInWords(fact.tips) : '';
  const at =
    'site' in fact && fact.site !== undefined ? ` at ${placeWords(practice, fact.site, roomOf(fact))}` : '';
  switch (fact.kind) {
    case 'moved':
      return `${items(practice, fact.items)} moved to ${placeWords(practice, fact.site, fact.room ?? null)}`;
    case 'departed':
      return `${items(practice, fact.items)} left${fact.site === undefined ? '' : ` for ${placeWords(practice, fact.site, null)}`}`;
    case 'calibrated':
      return `${scanner} calibration ${fact.outcome}`;
    case 'temperature':
      return `${fact.celsius.toFixed(1)} °C${at}`;
    case 'scan-started':
      return `${scanner} scan started${fact.tip === undefined ? '' : ` with tip ${fact.tip}`}${at}`;
    case 'scan-finished':
      return `${scanner} scan finished${fact.tip === undefined ? '' : ` with tip ${fact.tip}`}${at}`;
    case 'used':
      return `${tips} used${scanner === '' ? '' : ` on ${scanner}`}`;
    case 'inspected':
      return `${tips} inspected: ${fact.outcome}`;
    case 'wiped':
      return `${scanner} ${fact.part === 'all' ? 'wiped down' : `${fact.part} wiped`}`;
    case 'covered':
      return `${scanner} covered`;
    case 'fitted':
      return `tip ${fact.tip} fitted to ${scanner}`;
    case 'removed':
      return `${tips} taken off`;
    case 'washed':
      return `${tips} washed`;
    case 'bagged':
      return `${tips} bagged`;
    case 'sent':
      return `${tips} sent to autoclave`;
    case 'load-started':
      return `load ${fact.load} started${tips === '' ? '' : ` with ${tips}`}`;
    case 'load-finished':
      return `load ${fact.load} ${fact.outcome}${figures(fact)}`;
    case 'spore-test':
      return `spore test ${fact.outcome}${fact.ran === undefined ? '' : `, run ${fact.ran}`}`;
    case 'autoclave-test':
      return `${fact.sort} test ${fact.outcome}`;
    case 'sterile':
      return `${tips} back sterile`;
    case 'held':
      return `${items(practice, fact.items)} held${because(fact.reason)}`;
    case 'released':
      return `${items(practice, fact.items)} released`;
    case 'retired':
      return `${tips} retired${because(fact.reason)}`;
    case 'added':
      return `${tips} added`;
    case 'missing':
      return `${items(practice, fact.items)} missing${at}`;
    case 'found':
      return `${items(practice, fact.items)} found${at}`;
    case 'fault':
      return `${itemWords(practice, fact.item)}: ${fact.sort}`;
    case 'repaired':
      return `${items(practice, fact.items)} repaired`;
    case 'booked':
      return `${fact.count} ${fact.count === 1 ? 'scan' : 'scans'} booked for ${fact.day}${times(fact.times)}${at}`;
    case 'cancelled':
      return `${fact.count ?? ''} booked scan cancelled on ${fact.day}${times(fact.times)}${at}`.trim();
    case 'closed':
      return `closed${at} on ${inWords(fact.days)}`;
    case 'hours':
      return `hours${at} on ${fact.day}: ${fact.open ?? 'as usual'} to ${fact.shut ?? 'as usual'}`;
    case 'shown':
      return `${fact.person} shown: ${fact.topic}`;
    default:
      return decisionWords(practice, fact);
  }
}

function decisionWords(practice: Practice, fact: Said): string {
  switch (fact.kind) {
    case 'load-released':
      return `load ${loadNumber(fact.load)} released`;
    case 'doubted':
      return `${itemWords(practice, fact.item)} in doubt${because(fact.reason)}`;
    case 'doubt-settled':
      return `${itemWords(practice, fact.item)}: doubt settled`;
    case 'incident-opened':
      return `incident opened: ${fact.items.map((item) => itemWords(practice, item)).join(', ')}`;
    case 'incident-answered':
      return `incident: ${fact.reached ? 'reached a patient' : 'did not reach a patient'}`;
    case 'incident-closed':
      return `incident closed${because(fact.reason)}`;
    case 'pass-confirmed':
      return `${scannerWords(practice, fact.scanner)} pass confirmed: it had settled`;
    case 'pass-doubted':
      return `${scannerWords(practice, fact.scanner)} pass not counted: it had not settled`;
    case 'word':
      return fact.means === null ? `word forgotten: ${fact.words}` : `word kept: ${fact.words}`;
    default:
      return fact.kind;
  }
}

function items(practice: Practice, list: readonly Parameters<typeof itemWords>[1][]): string {
  return inWords(list.map((item) => itemWords(practice, item)));
}

function roomOf(fact: Said): string | null {
  return 'room' in fact && fact.room !== undefined ? fact.room : null;
}

function because(reason: string | undefined): string {
  return reason === undefined ? '' : `: ${reason}`;
}

function times(list: readonly string[] | undefined): string {
  return list === undefined || list.length === 0 ? '' : ` at ${inWords(list)}`;
}

function figures(fact: Extract<Said, { kind: 'load-finished' }>): string {
  const parts = [
    fact.celsius === undefined ? '' : `${fact.celsius} °C`,
    fact.minutes === undefined ? '' : `${fact.minutes} min`,
    fact.indicator === undefined ? '' : `indicator ${fact.indicator}`,
    fact.dry === undefined ? '' : fact.dry ? 'dry' : 'wet',
  ].filter((part) => part !== '');
  return parts.length === 0 ? '' : ` (${parts.join(', ')})`;
}

/** The number of a load as people say it, from its key. */
function loadNumber(key: string): string {
  return /^(?:[^/]*\/)?([^@]+)(?:@.*)?$/.exec(key)?.[1] ?? key;
}

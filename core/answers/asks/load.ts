import type { AskOf } from '../../reading/ask.ts';
import { loadMeant, loadName, loadsMeant } from '../../record/load-key.ts';
import type { LoadState, Mark } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { figuresInWords } from '../../rules/loads/judge-load.ts';
import { lookBack } from '../../rules/loads/look-back.ts';
import { capital, inWords } from '../../rules/tips/tip-words.ts';
import { F0_REFERENCE, f0OfHold } from '../../science/f0.ts';
import { clockWords } from '../../words/clock-words.ts';
import { tipsAsRanges } from '../../words/item-words.ts';
import { loadWords } from '../../words/load-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { Answer, AskView } from '../answer-view.ts';

/** How a load stands, in words. */
export const LOAD_STATUS = {
  open: 'no result yet',
  passed: 'passed',
  failed: 'failed',
  'needs-release': 'not released',
  doubted: 'in doubt',
} as const;

const FAILED = {
  said: '',
  short: 'counts as failed: too short for its temperature',
  indicator: 'counts as failed: its indicator had not changed',
} as const;

/** "What was in load 118?": its result first, its tips, its figures, and what was not said of it. */
export function answerLoad(ask: AskOf<'load'>, view: AskView): Answer {
  const loads = loadsAsked(ask.load, view);
  const items = [`load:${ask.load}` as const];
  if (loads.length === 0) {
    const number = loadName(ask.load).number;
    const message = lines([{ strong: `Load ${number}` }, ': not on this record.']);
    return { about: 'answer', message, items };
  }
  const message: Message = loads.flatMap((load) => loadBlocks(load, view));
  const tips = loads.flatMap((load) => load.tips.map((tip) => `tip:${tip}` as const));
  return { about: 'answer', message, items: [...items, ...new Set(tips)] };
}

/** The load that is meant by that number; where several autoclaves have one, the latest of each. */
export function loadsAsked(said: string, { state }: Pick<AskView, 'state'>): readonly LoadState[] {
  const name = loadName(said);
  const meant = loadsMeant(state, name);
  if (meant.length > 1 && name.autoclave === null && !state.loads.has(said)) return meant;
  const load = loadMeant(state, said);
  return load === undefined ? [] : [load];
}

function loadBlocks(load: LoadState, view: AskView): Message {
  const head: Line = [
    { strong: `${capital(loadWords(view.practice, load))}: ${LOAD_STATUS[load.status]}` },
    load.tips.length === 0 ? ', no tips noted.' : `, ${tipsAsRanges(load.tips)}.`,
  ];
  const points = [
    [timesWords(load, view)],
    ...correctedLines(load, view),
    ...figureLines(load),
    ...doubtLines(load, view),
    ...leftLines(load),
    ...concernLines(load, view),
  ];
  return [{ line: head }, { points }];
}

function timesWords(load: LoadState, view: AskView): string {
  const { started, finished } = load;
  const on = started === null ? 'Start not noted' : `On ${whenBy(started, load, view)}`;
  return finished === null ? on : `${on}, out ${whenBy(finished, load, view)}`;
}

/** Results that took one another's place: all of them stay in the record. */
function correctedLines(load: LoadState, view: AskView): readonly Line[] {
  const turns = load.results.filter(({ outcome }, at) => outcome !== load.results[at - 1]?.outcome);
  if (turns.length < 2) return [];
  const told = turns.map(({ outcome, mark }) => `${outcome} ${whenBy(mark, load, view)}`);
  return [[`Noted as ${told.join(', then ')}`]];
}

function figureLines(load: LoadState): readonly Line[] {
  const result = load.results.at(-1);
  if (result === undefined) return [];
  const { celsius, minutes, indicator, dry } = result;
  const said = [
    figuresInWords(load),
    indicator === null ? '' : `indicator ${indicator}`,
    dry === null ? '' : dry ? 'dry' : 'wet',
  ].filter((word) => word !== '');
  const unsaid = [
    celsius === null ? 'temperature' : '',
    minutes === null ? 'minutes' : '',
    indicator === null ? 'indicator' : '',
    dry === null ? 'dry or wet' : '',
  ].filter((word) => word !== '');
  return [
    ...(said.length === 0 ? [] : [[capital(said.join(', '))]]),
    ...(celsius === null || minutes === null ? [] : [[f0Words(celsius, minutes)]]),
    ...(unsaid.length === 0 ? [] : [[`Not said: ${inWords(unsaid)}`]]),
  ];
}

/** Equivalent minutes with z = 10 K, over the hold as said; a load that missed its band is never passed by it. */
function f0Words(celsius: number, minutes: number): string {
  const f0 = f0OfHold(celsius, minutes);
  return `F0 ${f0 < 10 ? f0.toFixed(1) : Math.round(f0)} min at ${F0_REFERENCE.celsius} °C, for interest only: it passes nothing`;
}

/** What stands against it, and who let it stand. */
function doubtLines(load: LoadState, view: AskView): readonly Line[] {
  const { failedWhy, wet, doubt, released, recalled, onHeldAutoclave, status } = load;
  const told = [
    status === 'failed' && failedWhy !== null && failedWhy !== 'said' ? FAILED[failedWhy] : '',
    status === 'needs-release'
      ? 'ran at a temperature with no published value: the lead, deputy or manager may release it'
      : '',
    status === 'doubted' && doubt !== null
      ? `in doubt since ${whenBy(doubt, load, view)}: type its result`
      : '',
    wet ? 'came out wet: its tips are not sterile' : '',
    recalled === null ? '' : `recalled ${whenBy(recalled, load, view)}`,
    released === null ? '' : `released ${whenBy(released.mark, load, view)}`,
    onHeldAutoclave ? 'ran on an autoclave that was out of service' : '',
  ];
  return told.filter((words) => words !== '').map((words) => [capital(words)]);
}

function leftLines({ left }: LoadState): readonly Line[] {
  return left.length === 0
    ? []
    : [[`Not part of its result: ${tipsAsRanges(left.map(({ tip }) => tip))}, noted elsewhere meanwhile`]];
}

/** A bad load's scans are told by "trace"; here only that there are some. */
function concernLines(load: LoadState, { state }: AskView): readonly Line[] {
  if (load.status === 'passed' && !load.wet && load.recalled === null) return [];
  const scans = load.finished === null ? 0 : lookBack(state, [load.key]).length;
  if (scans === 0) return [];
  const are = scans === 1 ? '1 scan or fitting' : `${scans} scans or fittings`;
  return [[{ strong: `${are} since it ended` }, `: ask “load ${load.number}: where did those tips go?”`]];
}

function whenBy(mark: Mark, load: LoadState, view: AskView): string {
  const by = mark.by === null ? '' : ` (${nameOf(view.practice, mark.by)})`;
  return clockWords(mark.at, view.now, zoneOf(view.practice, load.site)) + by;
}

import type { Entry } from '../../record/entry.ts';
import type { Finding } from '../../record/finding.ts';
import { findingsOn } from '../../record/findings.ts';
import type { LoadResult, LoadState, State } from '../../record/state.ts';
import { loadItem, loadWords } from '../../words/load-words.ts';
import { type Line, lines } from '../../words/message.ts';
import type { View } from '../matter.ts';
import type { Speech } from '../speech.ts';
import { capital, inWords, tipsInWords } from '../tips/tip-words.ts';
import { figuresInWords, judgedBy } from './judge-load.ts';
import { speakLoadFailed } from './load-failed.ts';
import { firstWithoutLimit, firstWithoutTable } from './said-once.ts';

/**
 * The reply to a load that passed: its tips by name, what its figures were held against, and what was not said of it.
 * A bad or doubtful result is answered by its own warning, so this says nothing then.
 */
export function loadReply(entry: Entry, view: View): readonly Speech[] {
  if (entry.fact.kind === 'load-started') return lateTips(entry.id, entry.fact.load, view);
  if (entry.fact.kind !== 'load-finished') return [];
  const load = loadOf(view.state, entry.fact.load, entry.id);
  const result = load?.results.find(({ mark }) => mark.entry === entry.id);
  if (load === undefined || result === undefined) return [];
  return replyTo(view, load, result, entry.fact.by !== undefined);
}

/** Tips told after their load's result: what it means for them is said now. */
function lateTips(entry: string, text: string, view: View): readonly Speech[] {
  const load = loadsOf(view.state, text).findLast(({ started }) => started?.entry === entry);
  const result = load?.results.at(-1);
  if (load === undefined || result === undefined) return [];
  if (load.status !== 'failed') return replyTo(view, load, result, false);
  const found = findingsOfLoad(view.state, load);
  const failed = found.findLast((finding) => finding.kind === 'load-failed' && finding.load === load.key);
  return failed?.kind === 'load-failed' ? speakLoadFailed(failed, view) : [];
}

function replyTo(
  view: View,
  load: LoadState,
  result: LoadResult,
  isReleasedBySaid: boolean,
): readonly Speech[] {
  if (load.status !== 'passed' || load.wet) return [];
  // Its tips are not known: that is asked at once (`load-without-tips`), and one post is enough.
  if (load.tips.length === 0 && load.started === null) return [];
  const items = [loadItem(load), ...load.tips.map((id) => `tip:${id}`)];
  if (load.recalled !== null) return [recalled(view, load, items)];
  const said = [
    headline(view, load),
    leftOut(view.state, load),
    stayHeld(view.state, load),
    figures(view, load, result),
    notSaid(result, isReleasedBySaid),
    heldAutoclave(load),
    ...once(view, load, result),
  ];
  return [{ about: 'load', items, message: lines(...said.filter((line) => line.length > 0)), mentions: [] }];
}

/** The load that took that entry as its result; none where the entry was refused or is not known to be of one. */
function loadOf(state: State, text: string, entry: string): LoadState | undefined {
  return loadsOf(state, text).findLast(({ results }) => results.some(({ mark }) => mark.entry === entry));
}

/** Its autoclave's spore test is positive: the load's own pass does not make its tips sterile. */
function loadsOf(state: State, text: string): readonly LoadState[] {
  const number = text.replace(/@.*$/, '').replace(/^.*\//, '');
  return (state.loadsByNumber.get(number) ?? [])
    .slice(-MEANT)
    .flatMap(({ key }) => state.loads.get(key) ?? []);
}

/** A note speaks of one of the latest loads of its number; numbers come round again for years. */
const MEANT = 8;

function findingsOfLoad(state: State, { results }: LoadState): readonly Finding[] {
  return results.flatMap(({ mark }) => findingsOn(state, mark.entry));
}

function recalled({ practice }: View, load: LoadState, items: readonly string[]): Speech {
  const message = lines([
    { strong: `${capital(loadWords(practice, load))}: its tips are not sterile.` },
    ` It passed, but its autoclave’s spore test is positive. Run ${tipsInWords(load.tips)} in another autoclave.`,
  ]);
  return { about: 'warning', items, message, mentions: [] };
}

function headline({ practice, state }: View, load: LoadState): Line {
  const name = capital(loadWords(practice, load));
  const sterile = load.tips.filter((id) => {
    const tip = state.tips.get(id);
    return tip?.state === 'sterile' && tip.sterile?.load === load.key;
  });
  if (sterile.length === 0) return [{ strong: `${name} passed.` }, ' No tip becomes sterile by it.'];
  const are = sterile.length === 1 ? 'is' : 'are';
  return [{ strong: `${name} passed:` }, ` ${tipsInWords(sterile)} ${are} sterile.`];
}

/** In the load, but fitted, used, spoilt or gone on meanwhile. */
function leftOut(state: State, load: LoadState): Line {
  const out = load.tips.filter((id) => state.tips.get(id)?.sterile?.load !== load.key);
  return out.length === 0 || out.length === load.tips.length
    ? []
    : [`Not ${tipsInWords(out)}: something was noted of ${out.length === 1 ? 'it' : 'them'} meanwhile.`];
}

/** Sterile, and held all the same: the hold is somebody's to release. */
function stayHeld(state: State, { key, tips }: LoadState): Line {
  const held = tips.filter((id) => {
    const tip = state.tips.get(id);
    return tip?.state === 'held' && tip.sterile?.load === key;
  });
  if (held.length === 0) return [];
  return [{ strong: `${capital(tipsInWords(held))} ${held.length === 1 ? 'stays' : 'stay'} held.` }];
}

function figures({ practice }: View, load: LoadState, { judged }: LoadResult): Line {
  const said = figuresInWords(load);
  if (said === '') return [];
  const by = judgedBy(practice, load);
  return judged === 'met' && by !== null
    ? [`${said}: long enough by ${by}.`]
    : [`${said}: recorded, not judged.`];
}

function notSaid({ celsius, minutes, indicator, dry }: LoadResult, releasedBySaid: boolean): Line {
  const missing = [
    ...(celsius === null ? ['temperature'] : []),
    ...(minutes === null ? ['minutes'] : []),
    ...(indicator === null ? ['indicator'] : []),
    ...(dry === null ? ['dry or wet'] : []),
    ...(releasedBySaid ? [] : ['who released it']),
  ];
  return missing.length === 0 ? [] : [`Not said: ${inWords(missing)}.`];
}

function heldAutoclave({ onHeldAutoclave }: LoadState): Line {
  return onHeldAutoclave
    ? [{ strong: 'It ran on an autoclave that was out of service: ask the lead before use.' }]
    : [];
}

/** What is said once in a practice's life, with the first load that it is true of. */
function once(view: View, load: LoadState, result: LoadResult): Line[] {
  const limitless = firstWithoutLimit(view.state, load, result);
  return [
    firstWithoutTable(view, load, result)
      ? ['No load table is named in the practice file, so figures are recorded, not judged. I say this once.']
      : [],
    limitless.length > 0
      ? [`No limit of cycles is set for ${tipsInWords(limitless)}: cycles are only counted. I say this once.`]
      : [],
  ];
}

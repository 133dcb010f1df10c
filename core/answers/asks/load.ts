import type { AskOf } from '../../reading/ask.ts';
import type { LoadState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { loadWords } from '../../rules/loads/load-words.ts';
import { capital, tipsInWords } from '../../rules/tips/tip-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { clockWords } from '../clock-words.ts';
import { type Line, lines } from '../message.ts';

const STATUS = {
  open: 'not finished yet',
  passed: 'passed',
  failed: 'failed',
  'needs-release': 'waits for the lead to release it',
  doubted: 'in doubt',
} as const;

/** "What was in load 118?": its tips, its result, what was not said of it. */
export function answerLoad(ask: AskOf<'load'>, view: AskView): Answer {
  const load = findLoad(view, ask.load);
  const items = [`load:${ask.load}` as const];
  if (load === null)
    return {
      about: 'answer',
      message: lines([{ strong: `Load ${ask.load}` }, ': not on this record.']),
      items,
    };
  const name = capital(loadWords(view.practice, load));
  const tips = load.tips.length === 0 ? 'no tips noted' : tipsInWords(load.tips);
  const message = lines(
    [{ strong: `${name}: ${STATUS[load.status]}` }, `, ${tips}.`],
    ...details(load, view),
  );
  return { about: 'answer', message, items };
}

/** The latest load of that number; `big/118` names the autoclave too. */
export function findLoad(view: Pick<AskView, 'state'>, said: string): LoadState | null {
  const [, autoclave, number = said] = /^(?:(.+)\/)?(.+)$/.exec(said) ?? [];
  const keys = view.state.loadsByNumber.get(number) ?? [];
  const loads = keys.flatMap((key) => view.state.loads.get(key) ?? []);
  return loads.filter((load) => autoclave === undefined || load.autoclave === autoclave).at(-1) ?? null;
}

function details(load: LoadState, view: AskView): readonly Line[] {
  const zone = zoneOf(view.practice, load.site);
  const at = (mark: LoadState['started']) =>
    mark === null ? 'not noted' : clockWords(mark.at, view.now, zone);
  const result = load.results.at(-1);
  const told: Line = [`Started ${at(load.started)}, ended ${at(load.finished)}.`];
  if (result === undefined) return [told];
  const said = [
    result.celsius === null ? '' : `${result.celsius} °C`,
    result.minutes === null ? '' : `${result.minutes} min`,
    result.indicator === null ? '' : `indicator ${result.indicator}`,
    result.dry === null ? '' : result.dry ? 'dry' : 'wet',
  ].filter((word) => word !== '');
  const unsaid = [
    result.celsius === null || result.minutes === null ? 'figures' : '',
    result.indicator === null ? 'indicator' : '',
    result.dry === null ? 'dry or wet' : '',
  ].filter((word) => word !== '');
  return [
    told,
    ...(said.length > 0 ? [[`${capital(said.join(', '))}.`]] : []),
    ...(unsaid.length > 0 ? [[`Not said: ${unsaid.join(', ')}.`]] : []),
  ];
}

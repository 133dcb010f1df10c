import { ruleValue } from '../../defaults/rule-value.ts';
import type { Practice } from '../../practice/practice.ts';
import { judgeFigures, ownCycles } from '../../record/load-standard.ts';
import type { LoadState } from '../../record/state.ts';
import type { HoldJudgement } from '../../science/sterilisation.ts';

const TABLES = {
  uk: 'the UK table',
  'us-gravity': 'the US table for gravity displacement',
  'us-prevacuum': 'the US table for prevacuum',
} as const;

/** What a load's figures are held against, in words; `null`: no table is named and its autoclave lists no cycles. */
export function judgedBy(practice: Practice, load: LoadState): string | null {
  if (ownCycles(practice, load).length > 0) return 'the autoclave’s own validated cycles';
  const table = ruleValue(practice, 'loadTable', { site: load.site ?? undefined });
  return table === 'none' ? null : TABLES[table];
}

/** The last result's figures, judged as the record judged them, with what was asked for. °C, minutes. */
export function judgeLoad(practice: Practice, load: LoadState): HoldJudgement {
  const last = load.results.at(-1);
  return judgeFigures(practice, load, { celsius: last?.celsius ?? null, minutes: last?.minutes ?? null });
}

/** "134 °C for 3.5 min", "134 °C", "3.5 min"; empty where no figure was said. */
export function figuresInWords(load: LoadState): string {
  const last = load.results.at(-1);
  const celsius = last?.celsius == null ? '' : `${last.celsius} °C`;
  const minutes = last?.minutes == null ? '' : `${last.minutes} min`;
  return celsius !== '' && minutes !== '' ? `${celsius} for ${minutes}` : `${celsius}${minutes}`;
}

import { ruleValue } from '../../defaults/rule-value.ts';
import { autoclaveOf } from '../../practice/look-up.ts';
import type { Practice } from '../../practice/practice.ts';
import type { LoadState } from '../../record/state.ts';
import { type HoldJudgement, judgeHold } from '../../science/sterilisation.ts';

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
  const place = { site: load.site ?? undefined };
  const table = ruleValue(practice, 'loadTable', place);
  const last = load.results.at(-1);
  const figures = {
    ...(last?.celsius == null ? {} : { celsius: last.celsius }),
    ...(last?.minutes == null ? {} : { minutes: last.minutes }),
  };
  return judgeHold(figures, {
    ...(table === 'none' ? {} : { table }),
    cycles: ownCycles(practice, load),
    aboveKelvin: ruleValue(practice, 'validatedAboveCelsius', place),
  });
}

function ownCycles(practice: Practice, load: LoadState) {
  return load.autoclave === null ? [] : (autoclaveOf(practice, load.autoclave)?.cycles ?? []);
}

/** "134 °C for 3.5 min", "134 °C", "3.5 min"; empty where no figure was said. */
export function figuresInWords(load: LoadState): string {
  const last = load.results.at(-1);
  const celsius = last?.celsius == null ? '' : `${last.celsius} °C`;
  const minutes = last?.minutes == null ? '' : `${last.minutes} min`;
  return celsius !== '' && minutes !== '' ? `${celsius} for ${minutes}` : `${celsius}${minutes}`;
}

import { ruleValue } from '../defaults/rule-value.ts';
import type { Practice } from '../practice/practice.ts';
import type { FactOf } from '../reading/fact.ts';
import { type HoldJudgement, judgeHold } from '../science/sterilisation.ts';
import type { LoadResult } from './load-state.ts';

/** A load's autoclave and site: what its figures are held against. */
interface Ran {
  readonly autoclave: string | null;
  readonly site: string | null;
}

/** An autoclave's own validated cycles; none where it lists none or is not known. */
export function ownCycles(practice: Practice, { autoclave }: Pick<Ran, 'autoclave'>) {
  return practice.autoclaves.find(({ id }) => id === autoclave)?.cycles ?? [];
}

/**
 * Figures of a load (°C, minutes; `null`: not said) judged by its autoclave's own validated cycles alone where it lists
 * them, else by the table that the practice names.
 */
export function judgeFigures(
  practice: Practice,
  ran: Ran,
  { celsius, minutes }: { readonly celsius: number | null; readonly minutes: number | null },
): HoldJudgement {
  const place = { site: ran.site ?? undefined };
  const table = ruleValue(practice, 'loadTable', place);
  const figures = {
    ...(celsius === null ? {} : { celsius }),
    ...(minutes === null ? {} : { minutes }),
  };
  return judgeHold(figures, {
    ...(table === 'none' ? {} : { table }),
    cycles: ownCycles(practice, ran),
    aboveKelvin: ruleValue(practice, 'validatedAboveCelsius', place),
    rowAboveKelvin: ruleValue(practice, 'loadRowAboveCelsius', place),
  });
}

/** Why a result is a fail, whatever was said of it; `null` where nothing speaks against it. */
export function whyFailed({
  outcome,
  indicator,
  judged,
}: Pick<LoadResult, 'outcome' | 'judged'> & { readonly indicator?: LoadResult['indicator'] | undefined }):
  | 'said'
  | 'indicator'
  | 'short'
  | null {
  if (outcome === 'failed') return 'said';
  if (indicator === 'failed') return 'indicator';
  return judged === 'short' ? 'short' : null;
}

/** What a result counts as, whatever was said of it: a hold that was too short, or an indicator that did not turn, is a fail. */
export function countsAs(
  practice: Practice,
  { outcome, celsius, minutes, indicator, autoclave }: FactOf<'load-finished'>,
  site: string | null = null,
): 'passed' | 'failed' {
  const ran = { autoclave: autoclave ?? null, site };
  const figures = { celsius: celsius ?? null, minutes: minutes ?? null };
  const { judged } = judgeFigures(practice, ran, figures);
  return whyFailed({ outcome, indicator, judged }) === null ? 'passed' : 'failed';
}

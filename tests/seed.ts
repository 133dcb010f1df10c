import fc from 'fast-check';

/**
 * Properties draw the same examples at each run, so that a red run means a change and not luck. `SEED=random` draws new
 * ones, `SEED=123` repeats a run that printed its seed; `npm run days` always draws new ones.
 */
const { SEED } = process.env;
if (SEED !== 'random') fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(SEED ?? 20_261_125) });

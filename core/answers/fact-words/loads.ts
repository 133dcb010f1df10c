import type { FactOf } from '../../reading/fact.ts';
import { countsAs } from '../../record/load-standard.ts';
import { TESTS } from '../../rules/loads/autoclave-tests.ts';
import { itemWords } from '../../words/item-words.ts';
import { autoclaveWords } from '../../words/load-words.ts';
import { type FactWords, tipsWords } from './parts.ts';

export const loadFacts = {
  'load-started': (practice, { load, tips, autoclave }) =>
    `${loadWithAutoclave(practice, load, autoclave)} started${tips === undefined || tips.length === 0 ? '' : ` with ${tipsWords(tips)}`}`,
  'load-finished': (practice, fact) => {
    const said = `${loadWithAutoclave(practice, fact.load, fact.autoclave)} ${fact.outcome}${figures(fact)}`;
    return countsAs(practice, fact) === fact.outcome ? said : `${said}; counts as failed`;
  },
  'load-released': (practice, { load, tips }) =>
    `release of ${itemWords(practice, `load:${load}`)}${tips === undefined ? '' : `: ${tipsWords(tips)}`}`,
  'spore-test': (practice, { outcome, ran, autoclave }) => {
    const of = autoclave === undefined ? '' : ` of ${autoclaveWords(practice, autoclave)}`;
    const told = { passed: 'clear', failed: 'positive', running: 'running' }[outcome];
    return `spore test${of} ${told}${ran === undefined ? '' : `, run ${ran}`}`;
  },
  'autoclave-test': (practice, { sort, outcome, autoclave }) =>
    `${TESTS[sort]}${autoclave === undefined ? '' : ` of ${autoclaveWords(practice, autoclave)}`} ${outcome}`,
} satisfies FactWords;

function loadWithAutoclave(
  practice: Parameters<typeof itemWords>[0],
  load: string,
  autoclave: string | undefined,
): string {
  return itemWords(
    practice,
    autoclave === undefined || load.includes('/') ? `load:${load}` : `load:${autoclave}/${load}`,
  );
}

/** ": 134 °C, 3.5 min, indicator passed, dry"; what was not said is left out. */
function figures({ celsius, minutes, indicator, dry }: FactOf<'load-finished'>): string {
  const told = [
    ...(celsius === undefined ? [] : [`${celsius} °C`]),
    ...(minutes === undefined ? [] : [`${minutes} min`]),
    ...(indicator === undefined ? [] : [`indicator ${indicator}`]),
    ...(dry === undefined ? [] : [dry ? 'dry' : 'wet']),
  ];
  return told.length === 0 ? '' : `: ${told.join(', ')}`;
}

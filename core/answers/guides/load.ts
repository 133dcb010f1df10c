import { ruleValue } from '../../defaults/rule-value.ts';
import { autoclavesOfSite } from '../../practice/look-up.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import { type HoldRow, type LoadTableName, rowsOfTable } from '../../science/load-tables.ts';
import { autoclaveWords } from '../../words/load-words.ts';
import type { Guide } from '../guide.ts';
import type { GuidePlace } from './guide-place.ts';

/** Common practice; the figures are the practice file's, or the published table that it works to. */
export function loadGuide(place: GuidePlace): Omit<Guide, 'title'> {
  const { tip, load, figures } = place;
  const inIt = autoclaveSaid(place);
  return {
    when: null,
    steps: [
      'Day’s tests of the autoclave first, as your local code asks. Tell me: “helix passed”, “control test passed”.',
      'Only tips that are washed, looked at, dry and bagged, an indicator in each bag.',
      'On each bag: autoclave, load number, date.',
      `Tell me: “load ${load} on${inIt} with tip ${tip}” and the others.`,
      `Run the cycle that your autoclave is validated for. ${figuresWords(place)}`,
      'Out: look at temperature, minutes and indicator; bags dry and whole. Let them cool before you touch them.',
      `Tell me all of it: “load ${load} passed, ${figures}, strip changed, dry”, or “load ${load} failed”.`,
    ],
    otherwise: [
      'Failed, wet, torn, or an indicator unchanged? Not sterile: wash, bag and run them again. I list where they were used.',
      'The autoclave itself in doubt? Do not use it: “the autoclave is out of service”.',
    ],
  };
}

/** Where a site has several, the note has to say which: " in the big autoclave". */
function autoclaveSaid({ sites, view }: GuidePlace): string {
  const [first, ...more] = sites.flatMap(({ id }) => autoclavesOfSite(view.practice, id));
  return first === undefined || more.length === 0 ? '' : ` in ${autoclaveWords(view.practice, first.id)}`;
}

/** Validated cycles of the sites' autoclaves; else the rows of the table named; else that nothing is judged. */
function figuresWords({ sites, view }: GuidePlace): string {
  const { practice } = view;
  const own = sites
    .flatMap(({ id }) => autoclavesOfSite(practice, id))
    .filter(({ cycles }) => cycles.length > 0)
    .map(({ id, cycles }) => {
      const each = cycles.map(({ celsius, minutes }) => `${celsius} °C for ${minutes} min`);
      return `${capital(autoclaveWords(practice, id))}: ${each.join(' or ')}.`;
    });
  const table = ruleValue(practice, 'loadTable', { site: sites[0]?.id });
  const every = sites.every(({ id }) => {
    const autoclaves = autoclavesOfSite(practice, id);
    return autoclaves.length > 0 && autoclaves.every(({ cycles }) => cycles.length > 0);
  });
  if (every && own.length > 0) return own.join(' ');
  const rest =
    table === 'none'
      ? `No load table is set${own.length === 0 ? '' : ' for the others'}: I keep the figures and judge none.`
      : `${own.length === 0 ? 'The practice’s table' : 'The others, by the practice’s table'}: ${rowsOf(table, ruleValue(practice, 'loadRowAboveCelsius')).map(rowWords).join(', ')}.`;
  return [...own, rest].join(' ');
}

/** A tip is a wrapped instrument: rows for other goods are left out. */
function rowsOf(table: LoadTableName, aboveKelvin: number): readonly HoldRow[] {
  return rowsOfTable(table, aboveKelvin).filter(
    ({ goods }) => goods === undefined || goods === 'wrapped instruments',
  );
}

function rowWords({ fromCelsius, toCelsius, minutes }: HoldRow): string {
  return `${fromCelsius}–${toCelsius} °C for ${minutes} min`;
}

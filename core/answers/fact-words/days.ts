import type { RuleDefault } from '../../defaults/rule-default.ts';
import { isRuleKey, ruleTable } from '../../defaults/rule-table.ts';
import { siteOf } from '../../practice/look-up.ts';
import { inWords, scannerWords } from '../../rules/tips/tip-words.ts';
import { shownWords } from '../topics.ts';
import { atPlace, type FactWords } from './parts.ts';

/** Bookings, hours, and what is kept of the practice itself. */
export const dayFacts = {
  booked: (practice, fact) => {
    const scans = fact.count === 1 ? '1 scan' : `${fact.count} scans`;
    return `${scans} booked${atPlace(practice, fact)} on ${fact.day}${times(fact.times)}`;
  },
  cancelled: (practice, fact) => {
    const scans =
      fact.count === undefined ? 'booked scans' : fact.count === 1 ? '1 scan' : `${fact.count} scans`;
    return `${scans} cancelled${atPlace(practice, fact)} on ${fact.day}${times(fact.times)}`;
  },
  closed: (practice, fact) => `closed${atPlace(practice, fact)} on ${inWords(fact.days)}`,
  hours: (practice, fact) => {
    const told = [
      ...(fact.open === undefined ? [] : [`open from ${fact.open}`]),
      ...(fact.shut === undefined ? [] : [`shut at ${fact.shut}`]),
    ];
    return `${told.join(', ') || 'hours'}${atPlace(practice, fact)} on ${fact.day}`;
  },
  shown: (_, { person, topic }) => `${person} shown ${shownWords(topic)}`,
  'pass-confirmed': (practice, { scanner }) =>
    `${scannerWords(practice, scanner)} pass counts: it had settled`,
  'pass-doubted': (practice, { scanner }) =>
    `${scannerWords(practice, scanner)} pass does not count: it had not settled`,
  setting: (practice, { name, value, site, scanner }) => {
    const of = scanner === undefined ? siteName(practice, site) : ` for ${scannerWords(practice, scanner)}`;
    return `setting ${name}${of}: ${value === null ? 'as the practice file has it' : value}`;
  },
  'rule-changed': (practice, { name, from, to, site, scanner }) => {
    const of = scanner === undefined ? siteName(practice, site) : ` for ${scannerWords(practice, scanner)}`;
    return `rule ${name}${of} changed from ${withUnit(name, from)} to ${withUnit(name, to)}`;
  },
  word: (_, { words, means }) =>
    means === null ? `word “${words}” forgotten` : `word “${words}” kept for ${means}`,
  'stocktake-asked': (practice, { site }) => `count of the tips asked for${siteName(practice, site)}`,
  stocktaken: (practice, { site }) => `tips counted${siteName(practice, site)}`,
  practice: () => 'practice file changed',
} satisfies FactWords;

function siteName(practice: Parameters<typeof siteOf>[0], site: string | undefined): string {
  return site === undefined ? '' : ` at ${siteOf(practice, site)?.name ?? site}`;
}

/** "15 minutes"; a value with no unit as it is. */
function withUnit(name: string, value: number | string | boolean): string {
  const rule: RuleDefault | undefined = isRuleKey(name) ? ruleTable[name] : undefined;
  const unit =
    rule?.type === 'number' && rule.unit !== 'count' && rule.unit !== 'share' ? ` ${rule.unit}` : '';
  return `${value}${unit}`;
}

function times(list: readonly string[] | undefined): string {
  return list === undefined || list.length === 0 ? '' : ` at ${inWords(list)}`;
}

import { scannerWords } from '../../rules/tips/tip-words.ts';
import { placeWords } from '../../words/place-words.ts';
import { atPlace, type FactWords, itemsWords } from './parts.ts';

export const scannerFacts = {
  moved: (practice, { items, site, room }) =>
    `${itemsWords(practice, items)} moved to ${placeWords(practice, site, room ?? null)}`,
  departed: (practice, { items, site }) =>
    `${itemsWords(practice, items)} left${site === undefined ? '' : ` for ${placeWords(practice, site, null)}`}`,
  calibrated: (practice, { scanner, outcome }) =>
    `${scannerWords(practice, scanner)} ${outcome === 'passed' ? 'calibrated, passed' : 'calibration failed'}`,
  temperature: (practice, fact) => `${fact.celsius.toFixed(1)} °C${atPlace(practice, fact)}`,
  'scan-started': (practice, fact) =>
    `${scannerWords(practice, fact.scanner)} scan started${withTip(fact.tip)}${atPlace(practice, fact)}`,
  'scan-finished': (practice, fact) =>
    `${scannerWords(practice, fact.scanner)} scan finished${withTip(fact.tip)}${atPlace(practice, fact)}`,
  wiped: (practice, { scanner, part }) =>
    `${scannerWords(practice, scanner)} ${part === 'all' ? 'wiped down' : `${part} wiped`}`,
  covered: (practice, { scanner }) => `${scannerWords(practice, scanner)} cover on`,
} satisfies FactWords;

function withTip(tip: string | undefined): string {
  return tip === undefined ? '' : ` with tip ${tip}`;
}

import { bookings } from './bookings.ts';
import { cover } from './cover.ts';
import { due } from './due.ts';
import { help } from './help.ts';
import { hours } from './hours.ts';
import { howPhrases } from './how.ts';
import { incidents } from './incidents.ts';
import { last } from './last.ts';
import { loads } from './loads.ts';
import { outOfUse } from './out-of-use.ts';
import type { Phrases } from './phrase.ts';
import { ready } from './ready.ts';
import { record } from './record.ts';
import { supply } from './supply.ts';
import { tests } from './tests.ts';
import { tips } from './tips.ts';
import { wear } from './wear.ts';
import { where } from './where.ts';
import { whoCan } from './who-can.ts';
import { whoMay } from './who-may.ts';

/** Every question known by its whole wording, the narrower before the wider. */
export const phrases: readonly Phrases[] = [
  help,
  tests,
  cover,
  howPhrases,
  whoMay,
  whoCan,
  incidents,
  loads,
  wear,
  outOfUse,
  hours,
  bookings,
  supply,
  where,
  last,
  ready,
  due,
  tips,
  record,
];

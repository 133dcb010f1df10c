import type { Scan, TemperatureStep } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { toInstant } from '../../time/zone.ts';
import { dayWords } from '../../words/clock-words.ts';
import { nameOf } from '../../words/people-words.ts';
import { placeWords } from '../../words/place-words.ts';
import type { Moment, Reason } from '../readiness.ts';
import { celsiusWords, timeAt } from './time-words.ts';

/**
 * One reason in plain words, to stand behind the scanner's name and a colon: "dropped 10:20, not calibrated since".
 * `site`: whose clock the times are said by.
 */
export function reasonWords(moment: Moment, reason: Reason, site: string | null): string {
  const { practice } = moment;
  const at = reason.mark === null ? '' : ` ${timeAt(moment, site, reason.mark.at)}`;
  switch (reason.word) {
    case 'unknown-scanner':
      return 'not in the practice file';
    case 'missing':
      return reason.mark === null ? 'nobody has said where it is' : `missing since${at}`;
    case 'in-transit':
      return `on its way${reason.to ? ` to ${placeWords(practice, reason.to, null)}` : ''} since${at}`;
    case 'held':
      return heldWords(moment, reason, at);
    case 'doubted':
      return `in doubt since${at}`;
    case 'settling':
      return `settling until ${timeAt(moment, site, reason.until ?? moment.now)}`;
    case 'not-wiped':
      return `not wiped since the scan that ended${at}`;
    case 'in-use':
      return `scan under way since${at}`;
    case 'failed':
      return (reason.times ?? 1) > 1
        ? `calibration failed ${reason.times} times, last${at}`
        : `calibration failed${at}`;
    case 'dropped':
      return `dropped${at}, not calibrated since`;
    case 'repaired':
      return `repaired, lent or updated${at}, not calibrated since`;
    case 'moved':
      return `came${reason.from ? ` from ${placeWords(practice, reason.from, null)}` : ''}${at}, not calibrated since`;
    case 'temperature':
      return stepWords(reason.step, at);
    case 'never':
      return 'no calibration on record';
    case 'weekly':
      return weeklyWords(moment, reason, site);
  }
}

/** A scan told so that someone remembers it: when it ended, where, and who noted it. */
export function scanWords(moment: Moment, scan: Scan): string {
  const told = scan.finished ?? scan.started;
  const place = placeWords(moment.practice, scan.site, scan.room);
  const by = told.by ?? scan.started.by;
  const who = by === null ? '' : `, noted by ${nameOf(moment.practice, by)}`;
  const verb = scan.finished === null ? 'began' : 'ended';
  return `scan ${verb} ${timeAt(moment, scan.site, told.at)}${place === '' ? '' : `, ${place}`}${who}`;
}

/** Both readings of a temperature change; `at`: when the later one was taken, with a space before it. */
function stepWords(step: TemperatureStep | undefined, at: string): string {
  if (step === undefined) return `temperature changed${at}`;
  return `${celsiusWords(step.now.celsius)} here${at}, ${celsiusWords(step.atPass.celsius)} at its last calibration`;
}

function heldWords({ practice }: Moment, { hold, mark }: Reason, at: string): string {
  if (hold?.sort === 'dropped') return `held until it passes calibration, since${at}`;
  const by = mark?.by == null ? '' : ` by ${nameOf(practice, mark.by)}`;
  return `held since${at}${by}${hold?.reason ? ` (${hold.reason})` : ''}`;
}

function weeklyWords({ practice, now }: Moment, { day }: Reason, site: string | null): string {
  if (day === undefined) return 'weekly calibration';
  const zone = zoneOf(practice, site);
  return `weekly calibration, due ${dayWords(toInstant(day, '12:00', zone), now, zone)}`;
}

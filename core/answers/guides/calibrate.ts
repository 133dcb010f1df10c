import { ruleValue } from '../../defaults/rule-value.ts';
import type { Weekday } from '../../practice/practice.ts';
import { TRY_AGAIN_STEPS } from '../../rules/scanner/calibration-reply.ts';
import type { Guide } from '../guide.ts';
import { type GuidePlace, ownNotes, sameOrEach, settleWords } from './guide-place.ts';

const DAYS: Readonly<Record<Weekday, string>> = {
  mon: 'Monday',
  tue: 'Tuesday',
  wed: 'Wednesday',
  thu: 'Thursday',
  fri: 'Friday',
  sat: 'Saturday',
  sun: 'Sunday',
};

const TIMES = ['', 'once', 'twice', 'three times'] as const;

/** Common practice. */
export function calibrateGuide(place: GuidePlace): Omit<Guide, 'title'> {
  const { scanner, view } = place;
  const failures = ruleValue(view.practice, 'calibrationFailuresToSupport');
  return {
    when: `Each week (${weekly(place)}), and after a move to another site, a drop, a repair, new software, a loan, a change of ${degrees(place)} °C, or a failure.`,
    steps: [
      `Let scanner and calibration tip come to the room’s temperature: after a move about ${settleWords(place)}.`,
      'Wipe the scanner down. No dust, hair or smear on the lens or in the calibration tip.',
      'Put on its own calibration tip, never another scanner’s.',
      ...ownNotes(place, 'calibrate'),
      `Start it as its maker says and leave it in peace: ${takes(place)} min.`,
      'Calibration tip off, cover on.',
      `Tell me: “calibrated ${scanner}”, or “calibration failed on ${scanner}”.`,
    ],
    otherwise: [
      `Failed? ${TRY_AGAIN_STEPS.join(' ')}`,
      `Failed ${TIMES[failures] ?? 'again'} with no pass between? Stop using it and call support.`,
    ],
  };
}

function weekly({ sites, view }: GuidePlace): string {
  return sameOrEach(
    sites.map(({ id, name }) => {
      const day = DAYS[ruleValue(view.practice, 'calibrationWeekday', { site: id })];
      return [name, `${day} ${ruleValue(view.practice, 'calibrationAskAt', { site: id })}`] as const;
    }),
  );
}

function degrees({ scanners, view }: GuidePlace): string {
  return sameOrEach(
    scanners.map(({ id, name, home }) => {
      const site = view.state.scanners.get(id)?.site ?? home;
      return [
        name,
        `${ruleValue(view.practice, 'temperatureChangeCelsius', { site, scanner: id })}`,
      ] as const;
    }),
  );
}

function takes({ scanners, view }: GuidePlace): string {
  return sameOrEach(
    scanners.map(({ id, name }) => {
      const from = ruleValue(view.practice, 'calibrationTakesFromMinutes', { scanner: id });
      const to = ruleValue(view.practice, 'calibrationTakesToMinutes', { scanner: id });
      return [name, from < to ? `${from} to ${to}` : `${from}`] as const;
    }),
  );
}

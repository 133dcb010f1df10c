import { ruleValue } from '../../defaults/rule-value.ts';
import type { Guide } from '../guide.ts';
import type { GuidePlace } from './guide-place.ts';

/** Common practice. */
export function tipsGuide(place: GuidePlace): Omit<Guide, 'title'> {
  const { tip, scanner, sites, view } = place;
  const each = ruleValue(view.practice, 'tipsPerScan', { site: sites[0]?.id });
  return {
    when: null,
    steps: [
      `Take the oldest sterile tip; ask me “can I use tip ${tip}?”. Bag whole and dry, indicator changed.`,
      `One patient, then off${each === 1 ? '' : ` (${each} tips a scan here)`}. Once on a scanner it is used, scan or not: “tip ${tip} off ${scanner}”.`,
      'Wash and rinse it as its maker says, gloves on. Keep it apart from the clean ones.',
      'Look at it, best with a magnifier: dirt, wash again; mirror or body damaged, do not use it.',
      'Dry it and bag it, with an indicator.',
      `To the autoclave: “tip ${tip} sent”, or “load … on with tip ${tip}”.`,
      'Sterile only when its load has passed. On the shelf, oldest to the front.',
    ],
    otherwise: [
      `Dropped, bag wet, torn or opened, or found after it was missing? Not sterile: round again. Tell me: “dropped tip ${tip}”.`,
      `Not sure? “don’t use tip ${tip}”: it stays held until somebody releases it.`,
    ],
  };
}

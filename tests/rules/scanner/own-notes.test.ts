import { describe, expect, it } from 'vitest';
import { composePost, settledMessage } from '../../../core/rules/compose.ts';
import type { Matter } from '../../../core/rules/matter.ts';
import { openMatters } from '../../../core/rules/matters.ts';
import { arrivalSpeeches, departureSpeeches } from '../../../core/rules/scanner/moving.ts';
import { Given } from '../given.ts';
import { FERNGATE, passed, words } from './ferngate.ts';

const OWN = 'The base goes on the left of the bracket.';

/** Ferngate, where blue and red have notes of their own; `red`: those of red. */
function two(red: string): Given {
  const given = new Given(
    FERNGATE.replace('name: red scanner, home: quay', `name: red scanner, home: quay, notes: ${red}`),
  );
  given.note('2026-11-18 10:30', passed('A', 'B', 'C'));
  return given;
}

function moved(given: Given): readonly string[] {
  const items = ['scanner:A', 'scanner:B'] as const;
  const turn = given.note('2026-11-25 09:00', { kind: 'moved', items: [...items], site: 'north' });
  const [entry] = given.timeline.ofTurn(turn);
  const [setUp] = entry === undefined ? [] : arrivalSpeeches(entry, given.view('2026-11-25 09:00'));
  return setUp === undefined ? [] : words(setUp.message);
}

function calibrations(given: Given): readonly Matter[] {
  return openMatters(given.view('2026-11-23 10:30')).filter(
    ({ about, site }) => about === 'calibration' && site === 'quay',
  );
}

describe('what the practice file wants said of one scanner, in a post of several', () => {
  it('given a note of one of two that arrive, then it says whose it is', () => {
    expect(moved(two('{}')).at(-1)).toBe(`4. Blue scanner: ${OWN}`);
  });

  it('given the same note of both, then it is said once, of no one', () => {
    expect(moved(two(`{set-up: [${OWN}]}`)).at(-1)).toBe(`4. ${OWN}`);
  });

  it('given each has its own, then each is named', () => {
    expect(moved(two('{set-up: [Use the short cable.]}')).slice(-2)).toEqual([
      `4. Blue scanner: ${OWN}`,
      '5. Red scanner: Use the short cable.',
    ]);
  });

  it('given two leave together, then the note to pack says whose it is', () => {
    const given = two('{}');
    const items = ['scanner:A', 'scanner:B'] as const;
    const turn = given.note('2026-11-25 09:00', { kind: 'departed', items: [...items] });
    const [entry] = given.timeline.ofTurn(turn);
    const [pack] = entry === undefined ? [] : departureSpeeches(entry, given.view('2026-11-25 09:00'));
    expect(words(pack?.message ?? []).at(-1)).toBe('• Blue scanner: Spare lens cap.');
  });

  it('given two are asked for in one post, then each note says whose it is', () => {
    const given = two('{calibrate: [Lay it flat.]}');
    const post = composePost(calibrations(given), 'first', given.view('2026-11-23 10:30'));
    expect(words(post.message)).toEqual(
      expect.arrayContaining(['• Blue scanner: Twist until it clicks.', '• Red scanner: Lay it flat.']),
    );
  });

  it('given one alone is asked for, then its note stands without its name', () => {
    const given = two('{}');
    const [one] = calibrations(given);
    const post = composePost(one === undefined ? [] : [one], 'first', given.view('2026-11-23 10:30'));
    expect(words(post.message)).toContain('• Twist until it clicks.');
  });
});

describe('an escalation that is settled', () => {
  it('given the lead was named in it, then what is struck through is the task alone', () => {
    const given = two('{}');
    const view = given.view('2026-11-23 12:30');
    const [one] = calibrations(given);
    const { message } = composePost(one === undefined ? [] : [one], 'lead', view);
    expect(words(message)[0]).toBe('Rosa: still open.');
    const settled = settledMessage(
      { room: '!quay:example.org', message },
      { practice: given.practice, by: 'Tom', at: view.now, how: 'done' },
    );
    expect(words(settled)[0]).toBe('Done by Tom, 12:30');
    expect(words(settled)[1]).toMatch(/^Calibrate blue scanner/);
  });
});

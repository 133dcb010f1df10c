import { describe, expect, it } from 'vitest';
import { toText } from '../../bot/show/text.ts';
import { questionFor } from '../../core/answers/questions.ts';
import type { Gap } from '../../core/language/read.ts';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { AT, aDay } from './a-day.ts';
import { fortyTips } from './three-sites.ts';

const WHEN = '2026-11-24T11:00:00Z';

function asked(gap: Gap, given = aDay(), sites: readonly string[] = []) {
  const wording = questionFor(gap, given.view(AT), sites);
  if (wording === null) throw new Error('nothing is asked');
  return {
    text: toText(wording.message),
    values: wording.choices.map(({ value }) => value),
    shown: wording.shown,
  };
}

/** A gap in a fact, with whatever else the reader gives. */
function gap(
  about: Gap['unclear']['about'],
  entry: Record<string, unknown>,
  more: Partial<Gap> & { choices?: string[]; of?: string } = {},
): Gap {
  const { choices, of, ...rest } = more;
  return {
    unclear: {
      kind: 'unclear',
      about,
      ...(choices === undefined ? {} : { choices }),
      ...(of === undefined ? {} : { of }),
    },
    draft: { list: 'facts', entry: { when: WHEN, ...entry } },
    ...rest,
  };
}

describe('what is asked back', () => {
  it('which scanner, with numbers to type', () => {
    const question = asked(gap('scanner', { kind: 'wiped', part: 'all' }, { slot: 'scanner', form: 'id' }));
    expect(question.text).toBe(`Which scanner was wiped down?
1. blue scanner
2. red scanner
3. green scanner`);
    expect(question.values).toEqual(['A', 'B', 'C']);
    expect(question.shown).toBe(3);
  });

  it('a word that is not known is named', () => {
    const { text } = asked(
      gap('scanner', { kind: 'moved', site: 'north' }, { choices: ['A', 'C'], words: 'big blue' }),
    );
    expect(text).toBe(`Which scanner was moved? I do not know “big blue”.
1. blue scanner
2. green scanner`);
  });

  it('which tip: those that the record makes likely; a typed number is the tip’s own', () => {
    const { text, values } = asked(gap('tip', { kind: 'washed' }, { slot: 'tips', form: 'ids' }));
    expect(text).toBe(`Which tips were washed?
1️⃣ tip 2
2️⃣ tip 4
3️⃣ tip 5
4️⃣ tip 6
Tap, or type its own number.`);
    expect(values).toEqual(['2', '4', '5', '6']);
  });

  it('which tip, too many to list: all may be typed, none is shown', () => {
    const { text, values, shown } = asked(
      gap('tip', { kind: 'sent' }, { words: '44', slot: 'tips', form: 'ids' }),
    );
    expect(text).toBe('Which tip was sent? There is no tip 44 in the practice file. Type its number: 1–12.');
    expect(values).toHaveLength(12);
    expect(shown).toBe(0);
  });

  it('what is here comes first: scanners in order, tips alone', () => {
    const given = fortyTips();
    expect(asked(gap('scanner', { kind: 'wiped', part: 'all' }), given, ['hill']).values).toEqual([
      'C',
      'A',
      'B',
    ]);
    given.note('2026-11-24 10:00', { kind: 'used', tips: ['2', '31'] });
    expect(asked(gap('tip', { kind: 'washed' }), given, ['hill']).values).toEqual(['31']);
    expect(asked(gap('tip', { kind: 'washed' }), given, ['north']).values).toEqual(['2', '31']);
  });

  it('which tips are in a load', () => {
    const { text } = asked(gap('tip', { kind: 'load-started', load: '120' }, { of: 'load:120' }));
    expect(text.split('\n')[0]).toBe('Which tips are in load 120?');
  });

  it('which tip went on: the sterile ones, the oldest first', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 08:00', { kind: 'load-started', load: '118', tips: ['7', '3'] });
    given.note('2026-11-24 08:40', { kind: 'load-finished', load: '118', outcome: 'passed' });
    expect(asked(gap('tip', { kind: 'fitted', scanner: 'A' }), given).values).toEqual(['3', '7']);
  });

  it('which site, which room of it, which load', () => {
    expect(
      asked(gap('site', { kind: 'moved', items: ['scanner:A'] }, { choices: ['quay', 'north'] })).text,
    ).toBe(
      `At which site?
1. Quay Street
2. North Clinic`,
    );
    expect(
      asked(gap('room', { kind: 'temperature', celsius: 20, site: 'quay' }, { words: 'surgery 9' })).text,
    ).toBe(`Which room? I do not know “surgery 9”.
1. Surgery 1
2. Surgery 2`);
    expect(
      asked(gap('load', { kind: 'load-finished', outcome: 'passed' })).text,
    ).toBe(`Which load has finished?
1️⃣ load 119
Tap, or type its own number.`);
  });

  it('how it went: of a load, a test, an inspection', () => {
    expect(
      asked(gap('outcome', { kind: 'load-finished', load: '119' }, { of: 'load:119', form: 'outcome' })).text,
    ).toBe(`Did load 119 pass?
1. passed
2. failed`);
    expect(asked(gap('outcome', { kind: 'spore-test' }, { form: 'outcome' }))).toEqual({
      text: `How did the spore test come out?
1. clear
2. positive
3. still running`,
      values: ['passed', 'failed', 'running'],
      shown: 3,
    });
    expect(asked(gap('outcome', { kind: 'autoclave-test', sort: 'leak' })).text.split('\n')[0]).toBe(
      'Did the test pass?',
    );
  });

  it('whether it is certain: what was understood, and what counts until then', () => {
    expect(asked(gap('certainty', { kind: 'sent', tips: ['4'] }, { of: 'tip:4', form: 'confirm' }))).toEqual({
      text: 'Is that certain? Tip 4 sent to the autoclave. Until you say, I take tip 4 as not safe to use. Answer yes or no.',
      values: ['yes', 'no'],
      shown: 2,
    });
  });

  it('whether the time is right', () => {
    const { text } = asked(
      gap(
        'time',
        { kind: 'wiped', scanner: 'A', part: 'all', when: '2026-11-24T04:00:00Z' },
        { form: 'confirm' },
      ),
    );
    expect(text).toBe(
      'Was that at 04:00? Blue scanner wiped down. Answer yes or no; if not, type it again with its time.',
    );
  });

  it('nothing understood: how to say it, with this practice’s own names', () => {
    const { text, values } = asked({ unclear: { kind: 'unclear', about: 'what' } });
    expect(text).toBe(`I did not follow that.
Say what was done and to what, such as “tip 1 sent to the autoclave” or “blue scanner wiped down”. Or ask for “help”.`);
    expect(values).toEqual([]);
  });

  it('a draft that is missing offers nothing to choose', () => {
    expect(asked({ unclear: { kind: 'unclear', about: 'scanner' } })).toEqual({
      text: 'Which scanner?\nPlease type the note again with that in it.',
      values: [],
      shown: 0,
    });
  });
});

import { describe, expect, it } from 'vitest';
import { guideFor, WHOSE_WORD } from '../../core/answers/guide.ts';
import { howTopic } from '../../core/reading/ask.ts';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { answerTo, textOf } from './ask.ts';
import { ALL_ROOM, HILL_ROOM } from './three-sites.ts';

const AT = '2026-11-24 11:00';
const how = (given: Given, topic: (typeof howTopic.options)[number], room?: string) =>
  textOf(given, { kind: 'how', topic }, AT, room);

describe('how do I …?', () => {
  it.each(howTopic.options)('%s: numbered steps, what else to do, and whose word comes first', (topic) => {
    const given = new Given(FERNGATE);
    const guide = guideFor(topic, given.view(AT), ['quay']);
    expect(guide.steps.length).toBeGreaterThanOrEqual(5);
    expect(guide.otherwise.length).toBeGreaterThanOrEqual(1);
    for (const step of [...guide.steps, ...guide.otherwise]) expect(step.length).toBeLessThanOrEqual(170);
    const text = how(given, topic);
    expect(text.split('\n').at(-1)).toBe(WHOSE_WORD);
    expect(text).toContain(`1. ${guide.steps[0]}`);
    expect(answerTo(given, { kind: 'how', topic }, AT).about).toBe('help');
  });

  it('calibrate, word for word', () => {
    expect(how(new Given(FERNGATE), 'calibrate')).toBe(
      `Calibrating. Each week (Monday 10:30), and after a move to another site, a drop, a repair, new software, a loan, a change of 5 °C, or a failure.
1. Let scanner and calibration tip come to the room’s temperature: after a move about 25 min.
2. Wipe the scanner down. No dust, hair or smear on the lens or in the calibration tip.
3. Put on its own calibration tip, never another scanner’s.
4. Blue scanner: Twist until it clicks.
5. Start it as its maker says and leave it in peace: 2 to 3 min.
6. Calibration tip off, cover on.
7. Tell me: “calibrated blue scanner”, or “calibration failed on blue scanner”.
• Failed? Look into the calibration tip and at the lens for dust or a hair. Clean both. Let scanner and calibration tip settle at room temperature. Try again.
• Failed twice with no pass between? Stop using it and call support.
The maker’s instructions, your local rules and licences come first.`,
    );
  });

  it('set up: the cautions are steps', () => {
    const text = how(new Given(FERNGATE), 'set-up');
    expect(text).toContain('Each plug only where the maker says, never into a network socket or switch.');
    expect(text).toContain('Blue scanner: The base goes on the left of the bracket.');
  });

  it('the practice’s own times, each where sites or scanners differ', () => {
    const given = new Given(
      `${FERNGATE}rules:
  loadTable: us-prevacuum
  calibrationFailuresToSupport: 3
  sites: {north: {calibrationWeekday: tue, calibrationAskAt: 09:30}}
  scanners: {B: {settleTauMinutes: 40, calibrationTakesToMinutes: 6}}
`,
    );
    const text = how(given, 'calibrate', ALL_ROOM);
    expect(text).toContain(
      'Each week (Quay Street Monday 10:30, North Clinic Tuesday 09:30, Hill House Monday 10:30), and',
    );
    expect(text).toContain('about blue scanner 25 min, red scanner 49 min, green scanner 25 min.');
    expect(text).toContain('in peace: blue scanner 2 to 3, red scanner 2 to 6, green scanner 2 to 3 min.');
    expect(text).toContain('Failed three times with no pass between?');
    expect(how(given, 'load')).toContain('The practice’s table: 132–135 °C for 4 min.');
    expect(how(given, 'load')).toContain('“load 118 passed, 132 for 4, strip changed, dry”');
  });

  it('an autoclave’s own validated cycles come before any table', () => {
    const given = new Given(
      `${FERNGATE}autoclaves: [{id: big, name: big autoclave, site: quay, cycles: [{celsius: 121, minutes: 20}]}]\n`,
    );
    expect(how(given, 'load')).toContain('validated for. The big autoclave: 121 °C for 20 min.');
    expect(how(given, 'load', HILL_ROOM)).toContain(
      'No load table is set: I keep the figures and judge none.',
    );
  });

  it('of two autoclaves the note says which, and the table is told of the one with no cycles of its own', () => {
    const given = new Given(
      `${FERNGATE}autoclaves:
  - {id: big, name: big autoclave, site: quay, cycles: [{celsius: 134, minutes: 3.5}]}
  - {id: small, name: small autoclave, site: quay}
rules: {loadTable: uk}
`,
    );
    expect(how(given, 'load')).toContain('“load 118 on in the big autoclave with tip 1” and the others.');
    expect(how(given, 'load')).toContain(
      '134 °C for 3.5 min. The others, by the practice’s table: 134–137 °C',
    );
  });

  it('fogging: what the record shows of tips and scanners comes first, and a room of the practice is the example', () => {
    const given = new Given(FERNGATE);
    expect(how(given, 'fogging')).toContain('1. Warm the tip');
    given.note('2026-11-23 09:00', { kind: 'fault', item: 'tip:4', sort: 'fogging' });
    expect(how(given, 'fogging')).toContain('1. Warm the tip');
    given.note('2026-11-23 10:00', { kind: 'fault', item: 'tip:4', sort: 'fogging' });
    given.note('2026-11-23 10:01', { kind: 'fault', item: 'scanner:A', sort: 'fogging' });
    given.note('2026-11-23 10:02', { kind: 'fault', item: 'scanner:A', sort: 'fogging' });
    expect(how(given, 'fogging').split('\n').slice(1, 3)).toEqual([
      '1. By the record tip 4 misted more than once: take another.',
      '2. Blue scanner misted more than once on record: look at its lens and heating first.',
    ]);
    expect(how(given, 'fogging')).toContain('“21.5 in Surgery 1”');
  });

  it('the seconds to warm by the room’s fresh reading', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 08:40', [
      { kind: 'moved', items: ['scanner:A'], site: 'quay', room: 's1' },
      { kind: 'moved', items: ['scanner:B'], site: 'quay', room: 's1' },
      { kind: 'temperature', celsius: 22, site: 'quay', room: 's1' },
    ]);
    expect(how(given, 'warm-up')).toContain('4. Warm it 45 s (22.0 °C, Surgery 1, Quay Street, 08:40).');
    expect(how(given, 'fogging')).toContain(
      '1. Warm the tip 45 s (22.0 °C, Surgery 1, Quay Street, 08:40), just',
    );
    expect(how(new Given(FERNGATE), 'warm-up')).toContain('4. Warm it 60 s (no fresh reading of the room).');
  });
});

describe('who can calibrate?', () => {
  it('who was shown, the latest first', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-23 10:00', { kind: 'shown', person: 'Tom', topic: 'calibrate' });
    given.note('2026-11-24 10:00', { kind: 'shown', person: 'Ann', topic: 'calibrate' });
    given.note('2026-11-24 10:00', { kind: 'shown', person: 'Ann', topic: 'load' });
    expect(textOf(given, { kind: 'who-can', topic: 'calibrate' }, AT)).toBe(`Shown how to calibrate:
• Ann, today by Rosa
• Tom, yesterday by Rosa
Who may do it is for the practice to say.`);
  });

  it('nobody, and how to note it', () => {
    expect(textOf(new Given(FERNGATE), { kind: 'who-can', topic: 'calibrate' }, AT)).toBe(
      'Nobody is on record as shown how to calibrate. To note it: “showed Tom how to calibrate”.',
    );
  });
});

describe('help', () => {
  it('examples of this practice’s own names, and how to put a slip right', () => {
    expect(textOf(new Given(FERNGATE), { kind: 'help' }, AT, HILL_ROOM)).toBe(
      `Tell me what you did, in your own words:
• “tip 1 on green scanner” · “used tip 1, sent to autoclave”
• “load 118 on with tip 1” · “load 118 passed, 134 for 3.5”
• “calibrated green scanner” · “green scanner wiped down”
• “moved green scanner to Quay Street”
Ask me:
• “which tips are out?” · “how many sterile tips have we got?”
• “is green scanner ready?” · “where is tip 1?” · “what’s due today?”
• “give me the rundown” · “what’s booked tomorrow?” · “when is the spore test due?”
• “how do I calibrate?” · “record for last week”
A slip? Edit your note, or type “undo”. Done what I asked? ✅ or “done”; not now: “later”.
I keep the record and remind; I certify nothing. No patient names here, please.`,
    );
  });

  it('why, asked of nothing', () => {
    expect(textOf(new Given(FERNGATE), { kind: 'why' }, AT)).toBe(
      'Reply “why?” to one of your own notes or to a post of mine.',
    );
  });
});

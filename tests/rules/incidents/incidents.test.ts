import { describe, expect, it } from 'vitest';
import { toText } from '../../../bot/show/text.ts';
import { composePost } from '../../../core/rules/compose.ts';
import { incidentAnswered } from '../../../core/rules/incidents/incident-answered.ts';
import { openIncidents } from '../../../core/rules/incidents/open-incidents.ts';
import { incidentRules } from '../../../core/rules/incidents/rules.ts';
import type { Matter } from '../../../core/rules/matter.ts';
import { toIso } from '../../../core/time/instant.ts';
import type { Given } from '../given.ts';
import { counted, FERNGATE, inWords, speechesOf, TOM } from '../loads/heard.ts';

/** Tip 4, used at 09:15, is fitted by Tom at that local time; what the question decides is recorded with it. */
function asked(local: string, text = FERNGATE): { given: Given; incident: string; of: string } {
  const given = counted(text);
  given.note('2026-11-23 09:15', { kind: 'used', tips: ['4'] }, { from: '@una:example.org' });
  const fit = { kind: 'fitted', tip: '4', scanner: 'A' } as const;
  const [, question] = speechesOf(given, local, fit, TOM);
  const [opened] = question?.decides ?? [];
  if (opened?.kind !== 'incident-opened') throw new Error('no incident was opened');
  given.note(local, opened, { from: '' });
  return { given, incident: opened.incident, of: opened.of };
}

function matters(given: Given, local: string): readonly Matter[] {
  const view = given.view(local);
  return incidentRules.flatMap((rule) => rule(view));
}

function answer(
  { given, incident, of }: ReturnType<typeof asked>,
  local: string,
  reached: boolean,
): readonly string[] {
  const turn = given.note(local, { kind: 'incident-answered', incident, of, tip: '4', reached }, TOM);
  const entry = given.timeline.entry(`${turn}.0`);
  if (entry === undefined) throw new Error('the answer was not kept');
  return incidentAnswered(entry, given.view(local)).map(inWords);
}

describe('whether an unsafe tip reached a patient', () => {
  it('given nobody answers for 5 minutes, then the lead is mentioned where it happened', () => {
    const { given } = asked('2026-11-23 10:40');
    given.said.spoke('@rosa:example.org', given.at('2026-11-23 08:40'));
    const view = given.view('2026-11-23 10:45');
    const [matter] = matters(given, '2026-11-23 10:45');
    expect(matter?.stages).toEqual([{ stage: 'first', at: given.at('2026-11-23 10:45') }]);
    expect(matter?.room).toBe('!quay:example.org');
    const post = composePost(matter === undefined ? [] : [matter], 'first', view);
    expect({ ...post, message: toText(post.message).split('\n') }).toEqual({
      about: 'incident',
      message: [
        'Rosa, please look at this:',
        'Did tip 4 reach a patient? Asked at 10:40, not answered yet. Why it matters: used, 09:15 (una); no passed load since.',
        'Anyone here may answer: yes or no. No patient names, please.',
      ],
      items: ['tip:4', 'scanner:A'],
      mentions: ['@rosa:example.org'],
    });
  });

  it('given the lead has not spoken that day, then the deputy', () => {
    // Rosa wrote on Friday, when the tips were counted.
    const [matter] = matters(asked('2026-11-23 10:40').given, '2026-11-23 10:45');
    expect(matter?.leads).toEqual(['@dan:example.org']);
  });

  it('given there is no deputy, then the lead all the same', () => {
    const text = FERNGATE.replace(', part: deputy', '');
    const [matter] = matters(asked('2026-11-23 10:40', text).given, '2026-11-23 10:45');
    expect(matter?.leads).toEqual(['@rosa:example.org']);
  });

  it('given the site is shut, then it is not held back', () => {
    const { given } = asked('2026-11-23 19:40');
    expect(matters(given, '2026-11-23 19:41')[0]?.stages).toEqual([
      { stage: 'first', at: given.at('2026-11-23 19:45') },
    ]);
  });

  it('given the answer is yes, then the tip is held, the lead is mentioned, and it stays open until closed', () => {
    const open = asked('2026-11-23 10:40');
    const { given, incident } = open;
    expect(answer(open, '2026-11-23 10:43', true)).toEqual([
      [
        'incident @rosa',
        'Tip 4 reached a patient. It is held. Why it was unsafe: used, 09:15 (una); no passed load since.',
        'Tell the clinician now and follow the practice’s own procedure. No patient names here, please.',
        'Rosa (lead), Dan (deputy) or Mo (manager) closes it with what was done: “incident closed: …”, and alone may release the tip.',
      ].join('\n'),
    ]);
    expect(given.state.tips.get('4')?.state).toBe('held');
    expect(matters(given, '2026-11-23 10:50')).toEqual([]);
    expect(openIncidents(given.view('2026-11-24 08:15'), 'quay').map(({ line }) => toText(line))).toEqual([
      'Open incident, yesterday 10:40: tip 4 reached a patient. Rosa (lead), Dan (deputy) or Mo (manager) closes it with what was done.',
    ]);
    expect(openIncidents(given.view('2026-11-24 08:15'), 'north')).toEqual([]);
    given.note('2026-11-24 09:00', { kind: 'incident-closed', incident, reason: 'reported' }, TOM);
    expect(openIncidents(given.view('2026-11-24 09:01'))).toHaveLength(1);
    given.note('2026-11-24 09:30', { kind: 'incident-closed', incident, reason: 'reported' });
    expect(openIncidents(given.view('2026-11-24 09:31'))).toEqual([]);
  });

  it('given the answer is no, then nothing more', () => {
    const open = asked('2026-11-23 10:40');
    expect(answer(open, '2026-11-23 10:43', false)).toEqual([]);
    expect(openIncidents(open.given.view('2026-11-23 10:44'))).toEqual([]);
    expect(open.given.state.tips.get('4')?.state).toBe('fitted');
  });

  it('given the note that fitted it is taken back, then nothing is asked any more', () => {
    const { given, of } = asked('2026-11-23 10:40');
    expect(matters(given, '2026-11-23 10:50')).toHaveLength(1);
    given.timeline.setAside(Number.parseInt(of, 10));
    expect(matters(given, '2026-11-23 10:50')).toEqual([]);
  });

  it('then while it waits for its answer it is in the brief', () => {
    const { given } = asked('2026-11-23 10:40');
    expect(
      openIncidents(given.view('2026-11-24 08:15')).map(({ line, incident }) => [
        toIso(incident.opened.at),
        toText(line),
      ]),
    ).toEqual([['2026-11-23T10:40:00Z', 'Open incident, yesterday 10:40: did tip 4 reach a patient?']]);
  });
});

import { describe, expect, test } from 'vitest';
import { closingWords, reasonIn, tellsWhatWasDone } from '../../core/desk/acts/closing-words.ts';

describe('a closing, in its two parts', () => {
  test.each([
    ['incident closed: dentist told', { named: 'incident', reason: 'dentist told' }],
    ['Look-back closed - all seen by Dr Patel', { named: 'Look-back', reason: 'all seen by Dr Patel' }],
    ['the recall is closed, everyone phoned', { named: 'recall', reason: 'everyone phoned' }],
    ['closed: dentist told', { reason: 'dentist told' }],
    ['incident closed.', { named: 'incident' }],
    ['closed', {}],
  ])('%s', (text, parts) => {
    expect(closingWords(text)).toEqual(parts);
  });

  test.each(['we are closed on Friday', 'closed all day', 'dentist told', 'is the incident closed?'])(
    'none in: %s',
    (text) => {
      expect(closingWords(text)).toBeNull();
    },
  );
});

describe('what was done, in reply to the question', () => {
  test.each([
    ['dentist told', 'dentist told'],
    ['closed: dentist told', 'dentist told'],
    ['incident closed – risk assessed', 'risk assessed'],
  ])('%s', (text, reason) => {
    expect(reasonIn(text)).toBe(reason);
  });

  test.each(['yes', 'ok', 'done.', 'closed', 'incident closed', 'nothing', '👍', '4'])(
    'nothing in: %s',
    (text) => {
      expect(reasonIn(text)).toBeNull();
    },
  );
});

describe('words typed plainly tell what was done', () => {
  test.each([
    'dentist told, patient will be followed up',
    'Dr Patel informed, patient rang and coming back Thursday',
    'reported to the manager',
    'spoke to the patient, bloods taken',
    'nobody harmed, it never touched the patient',
    'no contact',
    'patient seen by dr shah and happy',
    'ive rung the patient and logged it in the book',
    'risk assessment written up',
    'swapped the tip before scan started, all fine',
  ])('%s', (text) => {
    expect(tellsWhatWasDone(text)).toBe(true);
  });

  test.each([
    'one sec',
    'will do it in a min',
    'hang on, need to ask dr patel',
    'need to ring the patient',
    'who told the patient?',
    'can you tell the dentist please',
    'I should have been told',
    'not yet reported',
    'morning all',
    'need tea',
    'has anyone told the dentist?',
    'asking now',
    'going to be spoken to later',
    'the red one',
    'ok',
    'lunch?',
  ])('not: %s', (text) => {
    expect(tellsWhatWasDone(text)).toBe(false);
  });
});

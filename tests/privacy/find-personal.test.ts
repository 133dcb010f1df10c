import { describe, expect, test } from 'vitest';
import { findPersonal, type PersonalSort } from '../../core/privacy/find-personal.ts';
import { isHealthNumber } from '../../core/privacy/health-number.ts';

const context = { year: 2026, ownNames: new Set(['rosa', 'blue', 'north']) };

const personal: readonly [string, PersonalSort][] = [
  ['scan done for 943 476 5919 on blue', 'health-number'],
  ['nhs 9434765919 used tip 4', 'health-number'],
  ['used tip 4 on dob 3/4/80', 'date-of-birth'],
  ['pt born 12 May 1976, scanned with A', 'date-of-birth'],
  ['D.O.B. 14.02.1984 scan done', 'date-of-birth'],
  ['14/02/1984 scanned in surgery 1', 'date-of-birth'],
  ['ring her on 07700 900123 when ready', 'phone'],
  ['call +44 20 7946 0018', 'phone'],
  ['cell (312) 555-0142', 'phone'],
  ['send scans to jane.smith@example.org', 'e-mail'],
  ['patient Jane Smith scanned with tip 3', 'patient-name'],
  ['pt Mrs Patel in room 2', 'patient-name'],
  ["the patient's name is kim", 'patient-name'],
];

const ours: readonly string[] = [
  'load 20261123001 passed',
  'load 9434765919 out at 134',
  'scans at 9, 10:30 and 2 on Thursday',
  '08:30-12:30 13:30-17:30',
  'tips 1 2 3 4 5 6 7 8 9 10 sterile',
  'patient in surgery 2 now, same patient',
  'Patient left, scan done on blue',
  'Patient Rosa asked about',
  'serial 0123456789012',
  '@rosa:example.org can you look',
  'scanner bought 12/03/2022',
  '134 for 3.5 min, 118 passed',
  'closed 24/12/2026 to 02/01/2027',
  '1234567890',
];

describe('a patient’s identity in a note', () => {
  test.each(personal)('%s', (note, sort) => expect(findPersonal(note, context)).toContain(sort));
  test.each(ours)('left alone: %s', (note) => expect(findPersonal(note, context)).toEqual([]));
});

describe('NHS number, modulus 11', () => {
  // 943 476 5919: example in the NHS Data Model and Dictionary (from memory; recomputed here by the same rule).
  test('the dictionary’s example is valid', () => expect(isHealthNumber('9434765919')).toBe(true));
  test('any other last digit is not', () => {
    const valid = [...'0123456789'].filter((digit) => isHealthNumber(`943476591${digit}`));
    expect(valid).toEqual(['9']);
  });
  test('a remainder that calls for 10 is never valid', () => {
    // 00000000 6: 6·2 = 12, remainder 1, 11 − 1 = 10, which is never issued.
    expect([...'0123456789'].filter((digit) => isHealthNumber(`000000006${digit}`))).toEqual([]);
    // 00000000 5: 10, remainder 10, check 1.
    expect([...'0123456789'].filter((digit) => isHealthNumber(`000000005${digit}`))).toEqual(['1']);
  });
});

import { expect, test } from 'vitest';
import { toText } from '../../bot/show/text.ts';
import { board, boardWithout } from '../../core/answers/board.ts';
import { Desk } from '../../core/desk/desk.ts';
import { BASE } from '../practice/base-file.ts';

const ROOM = '!quay:example.org';
const AT = Date.parse('2026-11-25T10:00:00Z');

function told(notes: readonly string[]): Desk {
  const desk = new Desk();
  desk.settings(BASE, AT - 3_600_000);
  notes.forEach((text, index) => {
    const at = AT - 1_800_000 + index * 60_000;
    desk.take({ sort: 'note', id: `$${index}`, room: ROOM, from: '@rosa:example.org', at, text }, at);
  });
  return desk;
}

const shown = (desk: Desk, room = ROOM, at = AT) => toText(board(desk.view(at), room));

test('given a calibrated scanner, then the board says ready, where and calibrated when', () => {
  expect(shown(told(['calibrated blue, all good']))).toMatch(
    /Ready: blue scanner, Quay Street \(calibrated 09:30/,
  );
});

test('given a scanner that went to another site, then it is on that site’s board and says why it is not ready', () => {
  const desk = told(['calibrated blue, all good', 'moved blue to north clinic']);
  expect(shown(desk)).not.toContain('blue scanner');
  expect(shown(desk, '!north:example.org')).toMatch(
    /Not ready: blue scanner, North Clinic .*came from Quay Street/,
  );
});

test('given tips in several states, then each state has its count and its tips', () => {
  const text = shown(
    told(['tips 1 to 6 are sterile and on the shelf', 'used tip 4, sent to autoclave', 'tip 5 on blue']),
  );
  expect(text).toContain('Sterile, 4: 1–3, 6');
  expect(text).toContain('Sent to the autoclave, 1: 4');
  expect(text).toContain('On blue scanner, 1: 5');
});

test('given a minute that passes and nothing else, then only the last line changes', () => {
  const desk = told(['calibrated blue, all good']);
  const later = AT + 60_000;
  expect(boardWithout(desk.view(later), ROOM)).toEqual(boardWithout(desk.view(AT), ROOM));
  expect(shown(desk)).toContain('As of 10:00');
  expect(shown(desk, ROOM, later)).toContain('As of 10:01');
});

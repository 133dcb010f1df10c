import { describe, expect, test } from 'vitest';
import { toText } from '../../../bot/show/text.ts';
import { Desk } from '../../../core/desk/desk.ts';
import type { Input } from '../../../core/desk/input.ts';
import type { Turn } from '../../../core/desk/turn.ts';
import type { Vouched } from '../../../core/record/vouched.ts';
import { FERNGATE } from '../loads/heard.ts';

const SIGNED: Vouched = { device: 'signed', power: 0 };
const UNSIGNED: Vouched = { device: 'unsigned', power: 0 };
const IN_CLEAR: Vouched = { device: 'in-clear', power: 0 };
const START = Date.parse('2026-11-23T09:00:00Z');
const ROSA = '@rosa:example.org';
const TOM = '@tom:example.org';

/** A day at the desk, a note a minute. */
class Day {
  readonly turns: Turn[] = [];
  readonly #desk = new Desk();
  #minute = 0;

  constructor(file = FERNGATE) {
    const turn = this.#desk.settings(file, START);
    if (turn !== null) this.turns.push(turn);
  }

  get #now(): number {
    return START + this.#minute * 60_000;
  }

  /** What is said of it. */
  #take(input: Input): string {
    const turn = this.#desk.take(input, this.#now);
    if (turn === null) return '';
    this.turns.push(turn);
    return turn.effects
      .flatMap((effect) => (effect.does === 'post' ? [toText(effect.message)] : []))
      .join('\n');
  }

  #base(from: string, vouched: Vouched | undefined) {
    this.#minute++;
    const base = { id: `$${this.#minute}`, room: '!quay:example.org', from, at: this.#now };
    return vouched === undefined ? base : { ...base, vouched };
  }

  types(from: string, text: string, vouched?: Vouched): string {
    return this.#take({ sort: 'note', ...this.#base(from, vouched), text });
  }

  deletes(from: string, note: number, vouched?: Vouched): string {
    return this.#take({ sort: 'redaction', ...this.#base(from, vouched), redacts: `$${note}` });
  }

  tip(id: string) {
    return this.#desk.view(this.#now).state.tips.get(id);
  }

  load(number: string): string | undefined {
    const loads = this.#desk.view(this.#now).state.loads.recent();
    return loads.find((load) => load.number === number)?.status;
  }

  /** The same turns folded by another desk. */
  again(): Desk {
    const desk = new Desk();
    for (const [index, turn] of this.turns.entries())
      desk.replay(index + 1, JSON.parse(JSON.stringify(turn)));
    return desk;
  }

  get desk(): Desk {
    return this.#desk;
  }
}

const withRule = (value: string) =>
  FERNGATE.replace('loadTable: uk', `loadTable: uk, signedDevices: ${value}`);

describe('a release takes a typed word from a device that its owner has verified', () => {
  test.each<[string, string, Vouched | undefined, boolean]>([
    ['a signed device', FERNGATE, SIGNED, true],
    ['an unsigned one', FERNGATE, UNSIGNED, false],
    ['a plain chat room, where nothing better can be had', FERNGATE, IN_CLEAR, true],
    ['the terminal, which cannot know', FERNGATE, undefined, true],
    ['a plain room, where always is asked for', withRule('always'), IN_CLEAR, false],
    ['an unsigned device, where none is asked for', withRule('never'), UNSIGNED, true],
  ])('the lead, from %s', (_, file, vouched, taken) => {
    const day = new Day(file);
    day.types(TOM, "don't use tip 4");
    const said = day.types(ROSA, 'tip 4 is fine to use again', vouched);
    expect(day.tip('4')?.holds).toHaveLength(taken ? 0 : 1);
    if (!taken)
      expect(said).toMatch(/^Tip 4 is not released\. It came from a device that you have not verified/);
    // Whoever has the record folds the same.
    expect(day.again().save()).toEqual(day.desk.save());
  });

  test('so does that of whoever placed the hold; staff who may not are told who may, whatever the device', () => {
    const day = new Day();
    day.types(TOM, "don't use tip 4");
    expect(day.types(TOM, 'tip 4 is fine to use again', UNSIGNED)).toContain('not verified');
    day.types(TOM, 'tip 4 is fine to use again', SIGNED);
    expect(day.tip('4')?.holds).toHaveLength(0);
    day.types(ROSA, "don't use tip 5");
    expect(day.types(TOM, 'tip 5 is fine to use again', UNSIGNED)).toContain('Rosa (lead)');
  });

  test('the refusal is in the record, and said once', () => {
    const day = new Day();
    day.types(TOM, "don't use tip 4");
    const said = day.types(ROSA, 'tip 4 is fine to use again', UNSIGNED);
    expect(said.match(/not released/g)).toHaveLength(1);
    expect(day.turns.at(-1)?.entries?.[0]).toMatchObject({ what: { kind: 'released' }, vouched: UNSIGNED });
  });
});

describe('a load passed after all', () => {
  const failed = (vouched: Vouched) => {
    const day = new Day();
    day.types(TOM, 'load 118 on with tips 2, 5 in the big autoclave', SIGNED);
    day.types(TOM, 'load 118 failed', SIGNED);
    return { day, said: day.types(ROSA, 'load 118 passed, 134 for 3.5 min', vouched) };
  };
  test('from a signed device', () => {
    expect(failed(SIGNED).day.load('118')).toBe('passed');
  });
  test('not from any other', () => {
    const { day, said } = failed(UNSIGNED);
    expect(day.load('118')).toBe('failed');
    expect(said).toContain('not verified');
  });
  test('its first result is taken from any device: nothing is loosened', () => {
    const day = new Day();
    day.types(TOM, 'load 118 on with tips 2, 5 in the big autoclave', UNSIGNED);
    day.types(TOM, 'load 118 passed, 134 for 3.5 min', UNSIGNED);
    expect(day.load('118')).toBe('passed');
  });
});

describe('corrections that loosen', () => {
  test.each<[string, Vouched | undefined, boolean]>([
    ['in a chat with a server, never', SIGNED, false],
    ['in a plain room as little', IN_CLEAR, false],
    ['at the terminal, as undo does', undefined, true],
  ])('a deletion: %s', (_, vouched, freed) => {
    const day = new Day();
    day.types(TOM, "don't use tip 4", vouched);
    const said = day.deletes(TOM, 1, vouched);
    expect(day.tip('4')?.holds).toHaveLength(freed ? 0 : 1);
    if (!freed) expect(said).toContain('Rosa has to allow it: yes or no?');
  });

  test('undo typed on a signed device is taken from its author, on another it waits for the lead', () => {
    for (const vouched of [SIGNED, UNSIGNED]) {
      const day = new Day();
      day.types(TOM, "don't use tip 4", vouched);
      day.types(TOM, 'undo', vouched);
      expect(day.tip('4')?.holds).toHaveLength(vouched === SIGNED ? 0 : 1);
    }
  });

  test("the lead's yes to one counts from a signed device; until then the question stays open", () => {
    const day = new Day();
    day.types(TOM, "don't use tip 4", SIGNED);
    day.deletes(TOM, 1, IN_CLEAR);
    expect(day.types(ROSA, 'yes', UNSIGNED)).toContain('not verified');
    expect(day.tip('4')?.holds).toHaveLength(1);
    day.types(ROSA, 'yes', SIGNED);
    expect(day.tip('4')?.holds).toHaveLength(0);
  });
});

describe('a practice file that names no lead, deputy or manager', () => {
  const nobody = FERNGATE.replaceAll(/, part: (?:lead|deputy|manager)/g, '');
  test.each<[string, Vouched | undefined, boolean]>([
    ['whoever looks after the chat room (50)', { device: 'signed', power: 50 }, true],
    ['anybody else there', { device: 'signed', power: 49 }, false],
    ['anyone at the terminal', undefined, true],
  ])('%s may release', (_, vouched, may) => {
    const day = new Day(nobody);
    day.types(TOM, "don't use tip 4");
    const said = day.types('@una:example.org', 'tip 4 is fine to use again', vouched);
    expect(day.tip('4')?.holds).toHaveLength(may ? 0 : 1);
    if (!may) expect(said).toContain('Whoever looks after this chat room (a moderator) may release it');
  });
});

describe('the record of many days', () => {
  test.each<[string, string, Vouched | undefined, boolean]>([
    ['the lead', ROSA, UNSIGNED, true],
    ['staff', TOM, SIGNED, false],
    ['whoever sits at the terminal', TOM, undefined, true],
  ])('for %s', (_, from, vouched, given) => {
    const day = new Day();
    day.types(TOM, 'wiped down the blue scanner');
    const said = day.types(from, 'log for this week please', vouched);
    expect(day.turns.at(-1)?.effects.some(({ does }) => does === 'file')).toBe(given);
    if (!given) expect(said).toContain('Rosa (lead), Dan (deputy) or Mo (manager)');
  });
});

import { type Did, play } from '../play.ts';
import { SALTMARSH } from './practices.ts';

/**
 * Lives through days told a line each, in UTC, and gives back what the bot did:
 *
 *     2026-11-23                                   the date from here on
 *     08:40 tom@hbr calibrated kestrel, passed     a note; ids are $1, $2, … in order
 *     09:00 jo@hbr {"edits": "$1"} used tip 5      with more of the script's own keys
 *     restart 09:05 back 11:40
 *     end 12:00
 */
export function lived(script: string, practice = SALTMARSH): Promise<readonly Did[]> {
  let day = '2026-11-24';
  let notes = 0;
  const lines = script
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .flatMap((line): readonly object[] => {
      if (/^\d{4}-\d\d-\d\d$/.test(line)) {
        day = line;
        return [];
      }
      const at = (time = '') => `${day}T${time.length === 5 ? `${time}:00` : time}Z`;
      const end = /^end (\S+)$/.exec(line);
      if (end !== null) return [{ at: at(end[1]), end: true }];
      const restart = /^restart (\S+)(?: back (\S+))?$/.exec(line);
      if (restart !== null)
        return [{ at: at(restart[1]), restart: true, ...(restart[2] ? { back: at(restart[2]) } : {}) }];
      const [, time, who, room, more, text] = /^(\S+) (\w+)@(\w+) (?:(\{.*\}) ?)?(.*)$/.exec(line) ?? [];
      if (time === undefined) throw new Error(`not a line of a day: ${line}`);
      notes += 1;
      const base = { at: at(time), room: `!${room}:x.org`, from: `@${who}:x.org`, id: `$${notes}` };
      return [{ ...base, ...(text === '' ? {} : { text }), ...JSON.parse(more ?? '{}') }];
    });
  return play(lines, practice);
}

/** Posts about something, as "24 10:30 hbr": day, time in UTC, chat room. */
export function told(did: readonly Did[], about: string): readonly string[] {
  return did
    .filter((one) => one.does === 'post' && one.about === about)
    .map(({ at, room = '' }) => `${at.slice(8, 10)} ${at.slice(11, 16)} ${room.slice(1, room.indexOf(':'))}`);
}

/** Words of the last post about something; empty where there was none. */
export function words(did: readonly Did[], about: string): string {
  return did.findLast((one) => one.does === 'post' && one.about === about)?.text ?? '';
}

/** First lines of what posts were edited to, in order. */
export function edited(did: readonly Did[]): readonly string[] {
  return did.filter((one) => one.does === 'edit').map(({ text = '' }) => headOf(text));
}

/** The first line, and of a post that no longer holds who settled it and when. */
function headOf(text: string): string {
  const [line = ''] = text.split('\n');
  return /^(?:Done|No longer due|Taken back).*?\d\d:\d\d(?=: )/.exec(line)?.[0] ?? line;
}

/** Reactions under a note, as "09:00:45 🟢". */
export function marks(did: readonly Did[], note: string): readonly string[] {
  return did
    .filter((one) => one.does === 'react' && one.to === note)
    .map(({ at, key }) => `${at.slice(11, 19)} ${key}`);
}

interface Usage {
  readonly does: string;
  readonly options: readonly string[];
}

const STORE = '--store FOLDER     the folder of the record';
const PRACTICE = '--practice FILE    your practice file';
const YES = '--yes              do it; without it you are only told what would be done';

const USAGES: Readonly<Record<string, Usage>> = {
  room: {
    does: 'Opens the chat room in this terminal; without options on an example practice.',
    options: [
      PRACTICE,
      STORE,
      '--as NAME          who you are',
      '--chat ROOM        which chat room you are in',
    ],
  },
  matrix: {
    does: 'Runs Scanward in the chat rooms of your homeserver. The README says how to begin.',
    options: [
      PRACTICE,
      STORE,
      '--secrets FILE     where the password stands',
      '--new-device       sign in anew',
      '--new-recovery-key show, once, the key that gets lost keys back',
      '--health-port N    say how it does at http://127.0.0.1:N/health',
    ],
  },
  homeserver: {
    does: 'Starts a homeserver on this machine to try Scanward out. The README says more.',
    options: [],
  },
  read: {
    does: 'Says what each note means, one a line; notes come from standard input.',
    options: [
      PRACTICE,
      '--at TIME          when they were typed: 2026-11-23T10:15:00Z',
      '--why              which rules read it',
    ],
  },
  rehearse: {
    does: 'Plays a script of notes on a made-up clock; the script comes from standard input.',
    options: [PRACTICE, STORE],
  },
  demo: { does: 'Plays an invented week.', options: [] },
  rules: { does: 'Lists every rule, its value and where it comes from.', options: [PRACTICE] },
  health: { does: 'Says how the running program does.', options: [STORE] },
  verify: {
    does: 'Checks the whole record.',
    options: ['--expect N:HASH    whether line N still has the hash that was posted or written down', STORE],
  },
  repair: {
    does: 'Says what is damaged in the record and what can be saved.',
    options: [
      '--from BACKUP      an archive, or a copy of the folder, to take from it what is damaged here',
      STORE,
      YES,
    ],
  },
  backup: { does: 'Writes the record to one archive: npm run backup -- FILE.tar.gz', options: [STORE] },
  restore: {
    does: 'Makes a folder from an archive: npm run restore -- FILE.tar.gz --store FOLDER',
    options: [STORE],
  },
  rebuild: {
    does: 'Works everything out again from the record.',
    options: [
      STORE,
      '--from SCRIPT      make the record from the notes of a chat',
      PRACTICE,
      '--room             make a new folder from the ledger room, with the recovery key',
      '--secrets FILE     account and recovery key, as for the chat',
    ],
  },
  forget: {
    does: 'Erases a name, or what was typed in one line.',
    options: [
      '--person NAME      as the record has it: @tom:example.org',
      '--line NUMBER      the line of the record',
      STORE,
      YES,
    ],
  },
  'close-months': {
    does: 'Exports old months to a file, then erases what was typed in them.',
    options: [
      '--before MONTH     for example 2019-01',
      '--to FILE.csv      where the export goes',
      STORE,
      YES,
    ],
  },
  export: {
    does: 'Prints the record for a spreadsheet (CSV).',
    options: [
      '--from DATE        first day: 2026-11-23',
      '--to DATE          last day',
      '--site ID          one site alone',
      '--item ITEM        one item alone: tip:4 or scanner:A',
      '--json             JSON lines in place of CSV',
      STORE,
      PRACTICE,
    ],
  },
};

/** How a command is typed. */
export function howToCall(command: string): string {
  return command === 'room' ? 'npm start' : `npm run ${command}`;
}

/** What `--help` prints for a command; for the room also which other commands there are. */
export function usageOf(command: string): readonly string[] {
  const usage = USAGES[command];
  if (usage === undefined) return [];
  const { does, options } = usage;
  const own = [
    does,
    '',
    `${howToCall(command)}${options.length === 0 ? '' : ' -- OPTIONS'}`,
    ...options.map((line) => `  ${line}`),
  ];
  if (command !== 'room') return own;
  const others = Object.keys(USAGES).filter((name) => name !== 'room');
  return [
    ...own,
    '',
    'Other commands; "npm run NAME -- --help" says more:',
    ...others.map((name) => `  ${name.padEnd(13)} ${USAGES[name]?.does ?? ''}`),
  ];
}

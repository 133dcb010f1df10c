/** Notes with one slip in them, by hand, and what each must give: kinds of facts with what matters of them. */
export interface SlipCase {
  readonly note: string;
  /** Exactly these facts, each with at least these slots. */
  readonly facts?: readonly Readonly<Record<string, unknown>>[];
  readonly acts?: readonly string[];
  readonly unclear?: readonly string[];
}

/** Read by the practice of tests/corpus/practices/threeways.yaml: tips 1 to 60, scanners Robin, Pepper and green. */
export const SLIP_CASES: Readonly<Record<string, readonly SlipCase[]>> = {
  'a figure struck into a word is a slip': [
    { note: 'sent t6he used tips to steri', facts: [{ kind: 'sent', which: 'used' }] },
    {
      note: 'inspected t5ip 4, residue on it',
      facts: [{ kind: 'inspected', tips: ['4'], outcome: 'failed' }],
    },
    { note: 'tips 4 and 6 are st3rile', facts: [{ kind: 'sterile', tips: ['4', '6'] }] },
    { note: 'ti0 4 is used', facts: [{ kind: 'used', tips: ['4'] }] },
    { note: 'sent all the 8sed tips to steri', facts: [{ kind: 'sent', which: 'used' }] },
  ],
  'a figure that is meant stays one': [
    { note: 'tip4 sent to steri', facts: [{ kind: 'sent', tips: ['4'] }] },
    { note: 'used tips3 and 4', facts: [{ kind: 'used', tips: ['3', '4'] }] },
    { note: 'load118 passed', facts: [{ kind: 'load-finished', load: '118', outcome: 'passed' }] },
  ],
  'an id that is none is not guessed': [
    { note: 'used tip 5t', unclear: ['tip'] },
    { note: 'used tip 2, 5t and 7', unclear: ['tip'] },
    { note: 'tip 9o is sterile', unclear: ['tip'] },
  ],
  'a denial with a slip in it is one': [
    { note: 'load 118 did hot pass', facts: [{ kind: 'load-finished', outcome: 'failed' }] },
    { note: 'load 118 did nor pass', facts: [{ kind: 'load-finished', outcome: 'failed' }] },
    { note: 'load 118 did now pass', facts: [{ kind: 'load-finished', outcome: 'failed' }] },
    { note: 'tip 5 is mot sterile', facts: [{ kind: 'held', items: ['tip:5'] }] },
    { note: 'tip 5 is no9t sterile', facts: [{ kind: 'held', items: ['tip:5'] }] },
    { note: "tip 5 sn't sterile", facts: [{ kind: 'held', items: ['tip:5'] }] },
    { note: 'tip 5 noy sent', facts: [] },
    { note: 'tip 5 hot sterile', facts: [{ kind: 'held', items: ['tip:5'] }] },
    { note: 'tip 5 is no yet washed', facts: [] },
    { note: "load 118 did't pass", facts: [{ kind: 'load-finished', outcome: 'failed' }] },
    { note: 'i n4ver used tip 9', facts: [] },
    { note: "please don't sue tip 8", facts: [{ kind: 'held', items: ['tip:8'] }] },
  ],
  'what is now so is no denial': [
    { note: 'tip 5 is now sterile', facts: [{ kind: 'sterile', tips: ['5'] }] },
    { note: 'load 118 has now passed', facts: [{ kind: 'load-finished', outcome: 'passed' }] },
  ],
  'a doubt with a slip in it is one': [
    { note: 'npt sure load 118 passed', facts: [], unclear: ['certainty'] },
    { note: 'no sure load 118 passed', facts: [], unclear: ['certainty'] },
    { note: 'i thin load 118 passed', facts: [], unclear: ['certainty'] },
    { note: 'i thkn tip 4 went to steri', facts: [], unclear: ['certainty'] },
  ],
  'a word that is none where a denial could stand leaves nothing good': [
    { note: 'load 118 xqk passed', facts: [] },
    { note: 'froudd tip 9 at north', facts: [] },
  ],
  'a time with a slip in it is kept': [
    { note: 'used tip 5 10 minutes afo', facts: [{ kind: 'used', when: '2026-11-24T12:30:00Z' }] },
    { note: 'used tip 5 at quarter pats 12', facts: [{ kind: 'used', when: '2026-11-24T12:15:00Z' }] },
    { note: 'load 118 passed, 134 or 3.5 min', facts: [{ kind: 'load-finished', minutes: 3.5 }] },
  ],
  'a name with a slip in it is known': [
    { note: 'wiped obin', facts: [{ kind: 'wiped', scanner: 'R' }] },
    { note: 'someone dropped geeen', facts: [{ kind: 'fault', item: 'scanner:G' }] },
  ],
  'a bare act with a slip in it is one': [
    { note: 'undok', acts: ['undo'] },
    { note: 'umdo that please', acts: ['undo'] },
    { note: 'uup', acts: ['yes'] },
    { note: 'don3!', acts: ['done'] },
    { note: 'scrap hat, wrong chat', acts: ['undo'] },
  ],
};

/**
 * The words typed most in notes, in two tiers: of 7,683 notes of tests/corpus/voices by 64 people those in 100 or more, and
 * those in 30 or more, each typed by 12 people at least. Of two words that a slip may be of, the commoner one is likelier.
 */
const OFTEN =
  'the on tip in is to and i at tips it load for a scanner of passed has all used not are autoclave scan with was have wiped calibrated back we out off my how me use test last tomorrow again that please can sent up what scans now do you been failed calibrate sterile washed room left from calibration no done patient today down surgery put spore got moved be good bagged cover';
const SOMETIMES =
  'finished who did so this ok mirror clean sorry new where its friday just half will which came if when degrees thursday go gone yet thanks closed there clock minutes dropped under right by lens service still her took started cancelled fine monday found went shelf cleaned strip someone number but need pass fogging dirty pouch sure both here morning scrubbed rinsed find somebody remind over wipe after anyone lunch helix dry starting she due base ready week cracked think does many day says steri showed pt wants record lab past way had about turned cable pouched chair leak enough ones going keeps indicator time booked open send ago car late tell they min since changed scanning yesterday covered yes no undo fixed missing binned';

const OFTEN_SET: ReadonlySet<string> = new Set(OFTEN.split(' '));
const SOMETIMES_SET: ReadonlySet<string> = new Set(SOMETIMES.split(' '));

/** How often a word is typed in notes: 2 often, 1 sometimes, 0 seldom. */
export function commonness(word: string): 0 | 1 | 2 {
  if (OFTEN_SET.has(word)) return 2;
  return SOMETIMES_SET.has(word) ? 1 : 0;
}

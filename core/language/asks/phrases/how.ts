import { ask } from '../ask.ts';
import { form, type Phrase, type Phrases, SURE } from './phrase.ts';

const IT = '(?:it|scanner|<scanner>|tip|tips|<tip>|mirror|a scanner|a tip|they|them|one)';
const LONG =
  '(?:how long (?:does|do|should|must|will|would|to|for)|how many (?:seconds|secs|minutes|mins) (?:does|do|should|must|to|for|of)|how long)';

function how(topic: string, ...patterns: readonly string[]): Phrase {
  return { form: form(...patterns), make: () => ask('how', { topic }, SURE) };
}

/** Ways of doing things that are asked for by what they are called: "what's the warm-up?". */
export const howPhrases: Phrases = {
  name: 'ask:how',
  phrases: [
    how(
      'warm-up',
      '(?:whats|whats for|remind me of|show|show me) ?(?:tip )?(?:warm ?-?up|warming|heating|pre-?heat|warming up)(?: (?:time|routine|bit|thing|period|rule|again))?',
      '(?:tip )?(?:warm ?-?up|warming up|heating) (?:time|times|how long)',
      `${LONG} (?:i |we |you )?(?:warm|heat|pre-?heat|warm up|heat up)(?: ${IT})?(?: up)?(?: for)?`,
      `${LONG} ${IT} (?:need |take |have |want |got )?(?:to )?(?:warm|warm up|heat|heat up|be warmed|get warm|come up to temp|be heated)(?: up)?(?: for)?`,
      `(?:is|are) ${IT} (?:meant|supposed) to be warm`,
      `how warm (?:should|does|must) ${IT} (?:be|need to be|have to be)`,
    ),
    how(
      'set-up',
      '(?:whats|show|show me|remind me of) (?:settling|settle|acclimatisation|acclimatising|setting up|set ?-?up)(?: (?:time|period|rule|routine|steps))?',
      '(?:settling|settle|acclimatisation|acclimatising) (?:time|period)',
      `${LONG} (?:it|scanner|they|scanners|them|one) (?:need |take |have |want |got )?(?:to )?(?:settle|acclimatise|sit|rest|stand|cool down|be left|adjust|settle in)(?: for)?(?: after (?:a |being )?(?:move|moved|trip|journey|travel|drive))?`,
      '(?:how long|how many minutes) (?:before|till|til|until) (?:i|we|you) can (?:use|calibrate) (?:it|scanner)(?: after (?:a |being )?(?:move|moved|trip|journey|travel|drive|moving it))?',
    ),
    how(
      'fogging',
      'whats fogging',
      '(?:whats|whats for|show|show me|remind me of) ?(?:fogging|misting|steaming|foggy|fog)(?: up)?(?: (?:fix|cure|trick|tip|advice|routine|solution|thing|drill|procedure))',
      '(?:whats|is there|is there a|any) ?(?:fix|cure|trick|solution|advice|help|remedy) (?:for|with|on|to stop) (?:a )?(?:fogging|misting|steaming|foggy mirror|misty mirror|fog|fogged mirror|mist)(?: up)?(?: mirrors?| tips?)?',
      '(?:fogging|misting|fog) (?:fix|help|advice|guide|steps|tips)',
      `(?:why does|why is|why do|why are|how come) (?:${IT} )?(?:keep |keeps |always )?(?:fog|mist|steam|fogging|misting|steaming)(?: up)?`,
      `how (?:do|can|to|would|should) ?(?:i|we|you)? ?(?:fix|stop|prevent|cure|avoid|deal with) (?:${IT} )?(?:from )?(?:fogging|misting|steaming|fog|mist)(?: up)?`,
    ),
    how(
      'calibrate',
      '(?:whats|show|show me|remind me of|give me) (?:calibration|calibrating)(?: (?:steps|procedure|routine|drill|process|bit|guide|again))',
      'how long does (?:a |it )?(?:calibration|calibrating|calibrate|take to calibrate)(?: take)?',
      'how often (?:do|should|must|does) (?:we|i|you|scanner|it|<scanner>) ?(?:need to|have to|need|has to|be)? ?(?:calibrate|calibrated|calibrating|be calibrated)(?: (?:it|them|scanner|scanners|<scanner>))?',
      "what (?:do|should) (?:i|we) do (?:if|when) (?:calibration|it|a calibration|cal|<scanner>) (?:fails|fail|failed|wont pass|does not pass|won't pass|doesn't pass|won't calibrate|wont calibrate)",
    ),
    how(
      'load',
      'how (?:do|can|would|will) (?:i|we|you) (?:know|tell|see) (?:if|when|that|whether) (?:a )?(?:load|cycle|strip|indicator)(?: (?:has|is|was|worked|turned|passed|changed|ok|done|sterile))*',
      'how long (?:in|are they in|is it in|do they take in|does it take in|does a load take|does a cycle take|is a cycle|is a load)(?: (?:autoclave|<autoclave>))?',
      "what if (?:a )?(?:strip|indicator|load|cycle) (?:hasnt|hasn't|has not|didn't|didnt|did not|doesn't|fails|failed|won't) ?(?:turned|turn|changed|change|passed|pass)?",
      "what (?:do|should) (?:i|we) do (?:if|when) (?:a )?(?:load|cycle|autoclave|strip|indicator) (?:fails|fail|failed|didn't turn|doesn't turn|doesn't change|didn't change|hasn't turned|aborts|aborted|comes out wet)",
      '(?:load|cycle) (?:failed|aborted) what (?:now|next|do i do|do we do)',
    ),
    how(
      'clean',
      '(?:whats|show|show me|remind me of) (?:between patients|between-patients|wipe ?-?down|cleaning|turnaround)(?: (?:routine|steps|procedure|drill|process|bit))?',
      'what (?:do|should) (?:i|we) do between patients',
      '(?:what|which) (?:do|should|can) (?:i|we) (?:use to )?(?:wipe|clean) (?:it|scanner|<scanner>|lens|base)(?: (?:with|down|down with))?',
      '(?:what|which) wipes? (?:do|should|can) (?:i|we) use(?: (?:on|for) (?:it|scanner|<scanner>|lens))?',
    ),
    how(
      'move',
      '(?:what|how) (?:do|should|to) (?:i|we)? ?(?:need to )?(?:pack|take|bring)(?: with)? (?:when (?:moving|taking) )?(?:scanner|<scanner>|it)(?: (?:with me|along|to (?:another|other) (?:site|clinic)))?',
      '(?:whats|show|show me) (?:packing|moving)(?: (?:list|steps|routine|procedure|checklist))',
      '(?:packing|travel) (?:list|checklist|steps)',
    ),
    how(
      'tips',
      'what (?:do|should) (?:i|we) do (?:with|if|when|about) (?:i drop |we drop |someone drops |you drop )?(?:a |dropped |used |dirty |cracked |split |wet )*(?:tip|tips)(?: (?:is|gets|falls|drops|fell|on floor|falls on floor|dropped|after use|after))*',
      '(?:do|should|must) (?:<used-tips>|tips|used tips|they|dirty tips) (?:all )?(?:go|need to go|have to go|be|get) (?:in|into|put in) (?:a |pouches|pouch|bags|bag|pack)+',
      'what (?:comes|goes|happens|do i do|do we do|is) (?:after|next after) (?:washing|bagging|pouching|autoclaving|use|scanning|a scan)',
      '(?:whats|show|show me|remind me of) (?:tip )?(?:reprocessing|decon|decontamination|tip|tips)(?: (?:routine|steps|procedure|process|cycle|drill))',
    ),
  ],
};

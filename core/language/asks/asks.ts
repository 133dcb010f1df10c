import type { Clause } from '../clause.ts';
import { made, type Said } from '../frames/frame.ts';
import { topicOf } from '../frames/shown.ts';
import type { Made, Missing } from '../result.ts';
import { autoclaveItem } from '../roles/autoclave.ts';
import { itemsOf } from '../roles/items.ts';
import { placeOf } from '../roles/place.ts';
import { timeContext, timeOf } from '../roles/time.ts';
import { resolveForward } from '../times/forward.ts';
import { resolveDays } from '../times/resolve-days.ts';

export interface AskResult {
  readonly made: Made;
  readonly bonus: number;
  readonly missing?: Missing;
  /** It names nothing of ours: only a note that says nothing else may be read so. */
  readonly whole?: true;
}

/** One kind of question: `question` says that it was put as one, so that bare statements ask less. */
export interface Ask {
  readonly name: string;
  readonly read: (c: Clause, question: boolean) => AskResult | null;
}

function ask(
  kind: string,
  slots: Record<string, unknown>,
  bonus: number,
  said: Record<string, Said> = {},
  missing?: Missing,
): AskResult {
  return { made: made(kind, slots, said), bonus, ...(missing === undefined ? {} : { missing }) };
}

/** The clause's words as one line, as its patterns are written. */
function wordsOf(c: Clause): string {
  return c.parts
    .map((p) => p.text)
    .join(' ')
    .replaceAll(" 's", "'s");
}

function siteOf(c: Clause): Record<string, unknown> {
  const place = placeOf(c);
  return place?.site === undefined ? {} : { site: place.site };
}

function dayOf(c: Clause, site: unknown): Record<string, unknown> {
  const time = timeOf(c);
  if (time === null) return {};
  c.use(...time.said);
  if (time.span.now === true) return {};
  if (time.span.days.length === 0 && time.span.part === undefined) return {};
  const day = resolveForward(time.span, timeContext(c, typeof site === 'string' ? site : null)).days[0];
  return day === undefined ? {} : { day };
}

function oneItem(c: Clause, wanted = {}): { item: string; said: Said; missing?: Missing } | null {
  const items = itemsOf(c, { autoclaves: true, ...wanted });
  if (items === null) return null;
  const [item] = items.items;
  if (item === undefined)
    return items.missing === undefined
      ? null
      : { item: '', said: items.said, missing: { ...items.missing, slot: 'item', form: 'item' } };
  return { item, said: items.said };
}

const WH = [
  'wh',
  'anyq',
  'be',
  'have',
  'do',
  'know',
  'see',
  'get',
  'say',
  'show',
  'give',
  'need',
  'want',
  'request',
  'intend',
  'neg',
  'doubt',
  'oblige',
  'remember',
];

const isWh = (c: Clause, words: RegExp) => c.word(words) >= 0;

const help: Ask = {
  name: 'ask:help',
  read(c) {
    const text = wordsOf(c);
    if (
      !/^(please |pls |hi |hello |hey )*(help|help me|help please|help pls|menu|commands|\? help|bot help)( please| pls| bot)?$|what can (you|u) do|what are you able to do|what else can you do|what do you do|what can i (ask|say|type|tell)|how do (you|u) work|how does (this|it) work|how do i use (you|this|the bot)|what (commands|things) (can|do)|what are you for|what can this bot do|how does this bot work|what can the bot do|what can i ask you/.test(
        text,
      )
    )
      return null;
    for (const i of c.parts.keys()) c.use(i);
    return { ...ask('help', {}, 9), whole: true };
  },
};

const why: Ask = {
  name: 'ask:why',
  read(c) {
    const text = wordsOf(c);
    if (
      !/^(why|but why|why so|why is that|why's that|why did you (say|think|put|record|log|do) (that|this|so)|how come|how did you (get|know|work) (that|that out)|why that|explain|explain that|says who|what makes you (say|think) (that|so)|how do you know|why not)$/.test(
        text,
      )
    )
      return null;
    for (const i of c.parts.keys()) c.use(i);
    return { ...ask('why', {}, 9), whole: true };
  },
};

const who: Ask = {
  name: 'ask:who-can',
  read(c) {
    const text = wordsOf(c);
    if (!/\bwho\b|\banyone\b|\banybody\b|\bwhos\b|\bwho's\b/.test(text)) return null;
    if (
      !/who('s)? (can|knows how|able|is able|'s able|is trained|is allowed|'s trained|has been (shown|trained|taught)|'s been (shown|trained|taught)|all can|here can|else can|is signed off|was shown)|who's (been (shown|trained|taught)|trained|able|allowed|signed off)|anyone (who )?(knows? how)/.test(
        text,
      )
    )
      return null;
    const topic = topicOf(c);
    if (topic === null) return null;
    for (const i of c.parts.keys()) if (c.parts[i]?.unknown !== true) c.use(i);
    return { ...ask('who-can', { topic: topic.topic }, 2, { topic: [topic.at] }), whole: true };
  },
};

const how: Ask = {
  name: 'ask:how',
  read(c, question) {
    if (c.form('show', 'd') >= 0 && c.entities('person').length > 0) return null;
    const text = wordsOf(c);
    const asks =
      /\bhow (do|does|to|must|is|should|can|would|are|am|did|long|often|d'?you|you|we|best)\b|how's|\b(steps|instructions|guide|procedure|protocol|best way|right way|what's the way|proper way|correct way|what is the way|process) (for|to|of)\b|\bwhat('s| is) the (procedure|process|protocol|best way|right way|drill|routine|proper way|correct way)|(show|tell|remind) me how|remind me how|walk me through|can (someone|you|anyone|somebody) (show|tell|remind|explain|talk|walk) (me )?(to me )?(how|through)|explain how|how-to|what do i do (to|when|if)|what do we do (to|when|if)|not sure how to|don't know how to|forgot how to|forgotten how to|can't remember how to|cant remember how to|unsure how to|anyone know how to|know how to|do i need to warm|what's the trick/.test(
        text,
      );
    const fogs =
      c.has('fog') &&
      /why|how come|what's (causing|making)|what causes|what makes|how do (i|we|you) stop|stop .* (fogging|misting|steaming)|what can i do|what do (i|we) do|any (tips|ideas|advice)|what helps|prevent/.test(
        text,
      );
    if (/to do with/.test(text)) return null;
    if (!asks && !fogs) return null;
    if (/how (long|often)/.test(text) && !c.has('heat', 'calibrate', 'load')) return null;
    if (/how long (ago|since|has|have|till|until|before)/.test(text)) return null;
    if (/how (do|does|are|is|did) (it|you|they|he|she|we) (look|feel|go|going|doing)\b/.test(text))
      return null;
    const topic = fogs ? { topic: 'fogging', at: c.at('fog') } : topicOf(c);
    if (topic === null) return null;
    if (
      topic.topic === 'tips' &&
      topic.at >= 0 &&
      c.parts[topic.at]?.entity === undefined &&
      !c.has('wash', 'bag', 'fit', 'remove', 'autoclave', 'clean', 'do', 'tip')
    )
      return null;
    c.use(topic.at);
    c.useTags(
      ...WH,
      'calibrate',
      'wipe',
      'clean',
      'move',
      'bag',
      'wash',
      'fit',
      'load',
      'scanner',
      'tip',
      'autoclave',
      'run',
      'put',
      'sterilise',
      'fog',
      'heat',
      'travel',
      'remove',
      'cover',
      'lens',
      'base',
      'use',
      'unit',
      'steri',
      'start',
      'patient',
      'go',
      'keep',
      'mirror',
      'take',
      'work',
      'check',
      'site',
      'clinic',
      'record',
      'heater',
      'magnifier',
      'finish',
      'pouch',
      'scan',
      'suppose',
    );
    for (const [i, part] of c.parts.entries())
      if (part.entity !== undefined && part.entity.is !== 'number') c.use(i);
    const anchor =
      c.has('calibrate', 'scanner', 'tip', 'autoclave', 'fog', 'load') ||
      c.entities('scanner').length + c.entities('tips').length > 0 ||
      c.has('lens', 'cover', 'wipe', 'sterilise');
    if (
      !anchor &&
      !(
        question &&
        isWh(c, /^(it)$/) &&
        (c.has('wipe') || topic.topic === 'set-up' || topic.topic === 'warm-up')
      )
    )
      return null;
    return ask('how', { topic: topic.topic }, 1.6, { topic: [topic.at] });
  },
};

const trace: Ask = {
  name: 'ask:trace',
  read(c) {
    const text = wordsOf(c);
    const load = c.first('load') ?? null;
    const memory = c.scope.memory.load;
    const which =
      /(which|what|who|whose|how many) (\w+ )?(scans?|patients?|pts?|mouths?|people|px)|who('s| has| have)? (been|was|were|had|got|did we)|where (did|have|has|were|are) (those|the|these|its|all those|they|all the|them|it'?s) ?(tips?)?|where (did|have) (they|those|these) (go|gone|end up|been)|\btrace\b|track (down )?(everything|all|the tips)|look ?back|which (tips|scans) (were|are) affected|affected|who had|(everything|anything|anyone|any scans?) (that )?(from|scanned with|used)|recall|who did we (use|scan)|what happened to (the |those )?tips/.test(
        text,
      );
    if (!which) return null;
    if (/\bwhich tips\b|what tips/.test(text) && /(in|inside) load/.test(text)) return null;
    if (
      load !== null ||
      (memory !== null && /tips?|those|they/.test(text) && c.entities('tips').length === 0)
    ) {
      c.useTags(
        ...WH,
        'tip',
        'use',
        'scan',
        'patient',
        'load',
        'go',
        'find',
        'travel',
        'take',
        'fail',
        'pass',
        'put',
        'finish',
        'trace',
        'come',
        'move',
      );
      if (load !== null) c.use(load.at);
      const id = load?.entity.ids[0] ?? memory?.ids[0] ?? '';
      return ask('trace', { load: id }, load === null ? 2 : 1.2, {
        load: load === null ? 'the load spoken of just before' : [load.at],
      });
    }
    const tips = c.first('tips');
    if (tips === null) return null;
    if (/where (did|have|has|were|are|is)/.test(text)) return null;
    const [id] = tips.entity.ids;
    if (id === undefined) return null;
    c.use(tips.at);
    c.useTags(
      ...WH,
      'use',
      'scan',
      'patient',
      'load',
      'pass',
      'finish',
      'sterile',
      'tip',
      'autoclave',
      'trace',
      'find',
    );
    for (const one of c.entities('time')) c.use(one.at);
    return ask('trace', { item: `tip:${id}` }, 0.8, { item: [tips.at] });
  },
};

const load: Ask = {
  name: 'ask:load',
  read(c, question) {
    const found = c.first('load');
    if (found === null) return null;
    const text = wordsOf(c);
    const asks =
      /(what|which|whats|what's|show|list|tell|contents|how|did|has|was|is|were|when|who|any|status|result|give)/.test(
        text,
      );
    if (
      !asks ||
      (!question && !/(what|which|whats|what's|show me|list|tell me|contents|status|did|how)/.test(text))
    )
      return null;
    c.use(found.at);
    c.useTags(
      ...WH,
      'tip',
      'put',
      'run',
      'go',
      'pass',
      'fail',
      'finish',
      'autoclave',
      'load',
      'come',
      'start',
      'unit',
    );
    if (
      c.entities('tips').length > 0 &&
      !c.entities('tips').every(({ entity }) => entity.which !== undefined || !entity.named)
    )
      return null;
    for (const one of c.entities('autoclave')) c.use(one.at);
    return ask('load', { load: found.entity.ids[0] ?? '' }, 0.6, { load: [found.at] });
  },
};

const last: Ask = {
  name: 'ask:last',
  read(c, question) {
    const text = wordsOf(c);
    const when =
      /\bwhen('s|s| was| were| did| is| has| have|)\b|\bwhen (did|was|were)|last time|\blast\b|how long (ago|since|has|have)|who (last|calibrated|moved|wiped|cleaned|took|scanned|did|brought|carried|shifted|used|cal'd|put|disinfected)|latest|most recent|what was the last|days since|been (calibrated|wiped|cleaned|moved)/.test(
        text,
      );
    const done = question && /(has|have|did|was|were|is|been|'s|anyone|anybody|so|we|someone)/.test(text);
    if (!when && !done) return null;
    if (
      /\b(when|what time) (is|are|do|does|will|should|can|must|'s .* due)\b/.test(text) &&
      !/last/.test(text)
    )
      return null;
    const of = lastOf(c);
    if (of === null || (!when && asksSomeone(c))) return null;
    if (c.has('oblige') && !/last/.test(text)) return null;
    c.useTags(
      ...WH,
      'calibrate',
      'scan',
      'wipe',
      'move',
      'temp',
      'clean',
      'take',
      'unit',
      'bring',
      'use',
      'go',
      'run',
      'finish',
      'check',
      'travel',
      'base',
      'lens',
      'put',
      'swap',
      'come',
      'degree',
      'send',
    );
    const caltip = c.at('caltip') >= 0;
    const hasItem =
      c.entities('scanner').length > 0 ||
      c.at('scanner') >= 0 ||
      c.entities('tips').some(({ entity }) => entity.named) ||
      caltip ||
      c.entities('no-scanner').length > 0;
    const item =
      hasItem &&
      !(
        c.at('scanner') >= 0 &&
        c.entities('scanner').length === 0 &&
        /s$/.test(c.parts[c.at('scanner')]?.text ?? '')
      )
        ? oneItem(c)
        : null;
    if (item === null && !when && of !== 'calibration') return null;
    if (item?.missing !== undefined) {
      // "When was the scanner last calibrated?" is answered for all of them.
      if (item.missing.words === undefined) return ask('last', { of, ...siteOf(c) }, 1);
      return ask('last', { of }, 1, {}, item.missing);
    }
    for (const one of c.entities('time')) c.use(one.at);
    for (const one of c.entities('person')) c.use(one.at);
    const site = of === 'temperature' || item === null ? siteOf(c) : {};
    placeOf(c);
    return ask(
      'last',
      { of, ...(item === null ? {} : { item: item.item }), ...site },
      when ? 1 : 0.6,
      item === null ? {} : { item: item.said },
    );
  },
};

/** "Can someone wipe A?" asks for it to be done. */
function asksSomeone(c: Clause): boolean {
  if (/^(did|has|have)$/.test(c.parts[0]?.text ?? '')) return false;
  return ['calibrate', 'wipe', 'clean', 'move', 'scan', 'take', 'bring'].some((tag) =>
    c.parts.some(
      (p) =>
        p.entity === undefined &&
        p.senses.some((s) => s.tag === tag && s.form === 'b') &&
        !p.senses.some((s) => s.tag === tag && s.form === 'd'),
    ),
  );
}

function lastOf(c: Clause): string | null {
  if (c.at('calibrate') >= 0) return 'calibration';
  if (c.at('wipe') >= 0 || c.form('clean', 'd') >= 0) return 'wipe';
  if (c.at('temp') >= 0) return 'temperature';
  if (
    c.at('move') >= 0 ||
    c.form('take', 'd') >= 0 ||
    c.form('bring', 'd') >= 0 ||
    c.form('travel', 'd') >= 0
  )
    return 'move';
  if (c.at('scan') >= 0 || c.form('use', 'd') >= 0) return 'scan';
  return null;
}

const where: Ask = {
  name: 'ask:where',
  read(c, question) {
    const text = wordsOf(c);
    const asks =
      /\bwhere('s|s|abouts)?\b|whereabouts|(anyone|anybody|any1|someone|somebody|who) ?('s|has|have)? ?(see|seen|got|nicked|pinched|taken|borrowed|took|know where|found|spotted|having)|seen (the |my |our )?|who's got|whos got|who has|which (room|site|clinic|surgery|surg|branch|practice|place|op)|any sign of|find me|locate|\bwhr\b|what (room|site|surgery) is|hiding|gone to|where has/.test(
        text,
      );
    const here =
      question &&
      (c.entities('site').length > 0 || c.entities('room').length > 0) &&
      /^(is|are|has|have|'s|so|did)/.test(text);
    if (!asks && !here) return null;
    if (/\bwhere (can|do|should|to|does|would|shall) (i|we|you)?\b/.test(text) && !/find/.test(text))
      return null;
    if (/seen/.test(text) && !question && !/anyone|anybody|any1|has/.test(text)) return null;
    c.useTags(
      ...WH,
      'lose',
      'find',
      'take',
      'put',
      'go',
      'leave',
      'keep',
      'use',
      'move',
      'clinic',
      'roomword',
      'site',
      'unit',
      'travel',
      'shelf',
      'bring',
      'come',
      'car',
    );
    const item = oneItem(c, { bare: false, before: false });
    if (item === null) return null;
    for (const one of [
      ...c.entities('site'),
      ...c.entities('room'),
      ...c.entities('time'),
      ...c.entities('person'),
    ])
      c.use(one.at);
    return ask('where', { item: item.item }, 1, { item: item.said }, item.missing);
  },
};

const due: Ask = {
  name: 'ask:due',
  read(c, question) {
    const text = wordsOf(c);
    const asks =
      /(what|anything|something|whats|what's|any|is there anything|is something|something|wots|owt|wats|which|who's|are there|list|show)( \w+)*? (due|outstanding|overdue|needs? doing|needs? done|to do|left to do|pending|on the list|still to do|still needs|need doing|to be done|need to do|due today|on today|left|have to do|remaining|not been done|hasn't been done|not done|open)|what (do|should|must) (we|i) (need to|have to|still)|what's (left|due|outstanding)|what needs|to-?do list|jobs (for|left|to do|due|today)|anything (for me )?to do|is .*calibration due|due (today|tomorrow|this)|when('s| is) .*(due|calibration)|due for calibration|need(s)? calibrating|what have (we|i) (got )?(to do|left|outstanding)|reminders|what am i (meant|supposed) to|calibrations? due|anything i need to do|anything need/.test(
        text,
      );
    if (
      !asks &&
      !(question && /outstanding|overdue|pending|\bdue\b/.test(text) && !/when|to do with/.test(text))
    )
      return null;
    if (c.has('other') || /for (lunch|tea|dinner|breakfast)/.test(text)) return null;
    if (!question && !/^(what|whats|what's|anything|something|any|list|show|to|is|jobs)/.test(text))
      return null;
    if (/what's (left|next|on)\b/.test(text) && !/scanner|tip|due|do|outstanding|today|clinic/.test(text))
      return null;
    c.useTags(
      ...WH,
      'due',
      'finish',
      'calibrate',
      'scanner',
      'unit',
      'tip',
      'book',
      'wipe',
      'clean',
      'check',
      'record',
      'reminder',
      'open',
      'leave',
    );
    const site = siteOf(c);
    const scanner = c.entities('scanner').length > 0;
    if (scanner) {
      const item = oneItem(c);
      if (item !== null) return ask('ready', { item: item.item }, 1.2, { item: item.said }, item.missing);
    }
    if (
      !/due|outstanding|overdue|to do|needs? doing|need(s)? (to be )?done|to-do|todo|calibrat|still needs|pending|left to|on the list|need to do|left|to be done|jobs|remaining|reminders|done|what needs/.test(
        text,
      )
    )
      return null;
    return { ...ask('due', { ...site, ...dayOf(c, site.site) }, 2.2), whole: true };
  },
};

const supply: Ask = {
  name: 'ask:supply',
  read(c) {
    const text = wordsOf(c);
    const asks =
      /\benough\b|run out|running out|running short|run short|going to be short|be short|short of|how many (more )?(tips )?(do|will|would) (we|i) need|are we (short|ok|okay|good|alright|right|all right|fine|covered) for|last us|sufficient|will we (make|manage|have)|cover(ed)? (for )?(tomorrow|today)|do we need (more|any more|to bring)|are we ok on|get us through|see us through|going to make it/.test(
        text,
      );
    if (!asks) return null;
    if (c.at('tip') < 0 && c.entities('tips').length === 0) return null;
    c.useTags(
      ...WH,
      'tip',
      'sterile',
      'clean',
      'book',
      'scan',
      'booking',
      'finish',
      'run',
      'add',
      'use',
      'patient',
      'bring',
      'autoclave',
      'pass',
      'go',
      'cover',
      'heat',
    );
    for (const one of c.entities('tips')) c.use(one.at);
    const site = siteOf(c);
    return ask('supply', { ...site, ...dayOf(c, site.site) }, 1.6);
  },
};

const tips: Ask = {
  name: 'ask:tips',
  read(c, question) {
    const text = wordsOf(c);
    const set = c.entities('tips').find(({ entity }) => entity.which !== undefined);
    const ones = question ? c.word(/^ones$/) : -1;
    if (c.at('tip') < 0 && set === undefined && ones < 0) return null;
    if (c.entities('tips').some(({ entity }) => entity.ids.length > 0)) return null;
    c.use(ones);
    const short = question && (set !== undefined || /^(any )?tips? out\b/.test(text));
    if (!short && !listAsked(text, question)) return null;
    const filter = filterOf(c, text, set?.entity.which);
    if (filter === null) return null;
    c.use(set?.at ?? -1);
    c.useTags(
      ...WH,
      'tip',
      'sterile',
      'sterilise',
      'use',
      'clean',
      'bag',
      'wash',
      'shelf',
      'finish',
      'unit',
      'record',
      'send',
      'autoclave',
      'leave',
      'come',
      'go',
      'book',
      'patient',
      'fit',
      'scanner',
      'pass',
      'lose',
      'hold',
      'wash',
      'release',
      'load',
      'steri',
      'retire',
      'open',
      'number',
      'keep',
    );
    return ask('tips', { filter, ...siteOf(c) }, 1.4);
  },
};

function listAsked(text: string, question: boolean): boolean {
  if (!LIST_WORDS.test(text)) return false;
  return question || LIST_OPENS.test(text.replace(/^(hi|hello|hey|morning|please|pls|can you|could you|so|and|ok) /, ''));
}

const LIST_WORDS =
  /\bwhich\b|\bwhat\b|how many|what's|whats|list|how's|have we|do we have|any|are there|show|where are|where's|tell me|status|give me|got|is there|are all|wats|left/;
const LIST_OPENS = /^(which|what|how many|list|show|any|status|give|tell|tips)/;

function filterOf(c: Clause, text: string, which: string | undefined): string | null {
  if (
    /\bused\b|dirty|\bneeds? (washing|sterilising|processing|reprocessing|doing|to go)|need reprocessing|contaminated|need to go/.test(
      text,
    ) ||
    which === 'used'
  )
    return 'used';
  if (
    /\bout\b|missing|not sterile|aren't sterile|on scanners|not back|off the shelf|in circulation|on hold|held|not available|away|in the autoclave|in steri|in use|unavailable/.test(
      text,
    )
  )
    return 'out';
  if (
    c.has('sterile', 'sterilise') ||
    /clean|ready|available|good to go|fresh|usable|can (we|i) use|on the shelf|\bleft\b|spare|ok to use|fine to use|safe to use|can be used/.test(
      text,
    ) ||
    which === 'sterile'
  )
    return 'sterile';
  if (which === 'washed' || which === 'bagged' || which === 'sent') return 'out';
  if (
    /(which|what|how many|list|all|show|status)/.test(text) &&
    /(have|got|there|all|list|own|status|at|total|do we|tips)/.test(text)
  )
    return 'all';
  return null;
}

const history: Ask = {
  name: 'ask:history',
  read(c, question) {
    const text = wordsOf(c);
    const asks =
      /what('s| is| has)? ?(been |has )?happen(ed|ing) (with|to)|everything that( has|'s)? happened|history|what's the story|story (with|of|on)|tell me about|what do (we|you) know about|what('s| has) been (done|going on)|what's (up|going on|the deal|wrong) with|whats (up|going on|wrong) with|everything (about|on|for)|life story|log (of|for) tip|timeline|track record|what's happening with|journey|what('s| is) the latest (on|with)|update on|where has .* been|what was done (to|with)|what have we done|how many (times|cycles|uses|goes)|show me|record of|records? for/.test(
        text,
      );
    if (!asks) return null;
    if (/how many (times|cycles|uses|goes)/.test(text) && c.entities('tips').length === 0) return null;
    if (
      /\bshow me\b/.test(text) &&
      !question &&
      c.entities('tips').length + c.entities('scanner').length === 0
    )
      return null;
    // no item named: "show me which tips are out" asks for a list
    if (c.entities('tips').length + c.entities('scanner').length + c.entities('autoclave').length === 0 && /which|what tips|how many/.test(text)) return null;
    c.useTags(
      ...WH,
      'record',
      'go',
      'do',
      'move',
      'fail',
      'finish',
      'travel',
      'use',
      'run',
      'load',
      'unit',
      'sick',
      'turn',
      'scan',
    );
    const item = oneItem(c, { before: false });
    if (item === null) return null;
    for (const one of c.entities('time')) c.use(one.at);
    return ask('history', { item: item.item }, 1, { item: item.said }, item.missing);
  },
};

const record: Ask = {
  name: 'ask:record',
  read(c, question) {
    const noun = c.at('record');
    if (noun < 0) return null;
    const text = wordsOf(c);
    const time = timeOf(c);
    if (time === null) return null;
    if (c.has('other') || c.entities('tips').length + c.entities('scanner').length > 0) return null;
    if (
      c.parts[noun - 1]?.text === 'to' ||
      c.exactly('break', 'bsdg') >= 0 ||
      /\b(break|breaks|posted|unable)\b/.test(text)
    )
      return null;
    if (/(is|was|are|were) (in|on|done|kept|written|filled|up to date)/.test(text) && !question) return null;
    const site = siteOf(c);
    const days = resolveDays(
      time.span,
      timeContext(c, typeof site.site === 'string' ? site.site : null),
      'back',
    );
    if (days === null) return null;
    const bare =
      c.parts.length <= 8 ||
      question ||
      /please|pls|plz|send|get|give|need|want|show|export|can i|could/.test(text);
    if (!bare) return null;
    c.use(...time.said, noun);
    c.useTags(
      ...WH,
      'record',
      'send',
      'get',
      'give',
      'show',
      'book',
      'run',
      'put',
      'book',
      'scanner',
      'calibrate',
      'tip',
      'autoclave',
      'use',
      'load',
      'see',
      'travel',
      'check',
      'add',
    );
    return {
      ...ask('record', { from: days.from, to: days.to, ...site }, 1.4, { from: time.said, to: time.said }),
      whole: true,
    };
  },
};

const ready: Ask = {
  name: 'ask:ready',
  read(c, question) {
    const text = wordsOf(c);
    const asks =
      /ready|good to go|right to (go|use)|possible to use|able to use|\b(ok|okay|fine|safe|alright|still out|still off|still down|still broken|all right|clear|cleared|good|clean|sterile|free|available|usable|useable|allowed|fit|up and running|working|in service|charged|working|wiped|settled|dirty)\b|can .* be used|can (i|we|u|you|she|he|someone) (use|have|take|scan|grab|start|pop|put|borrow)|(should|may|could|shall) (i|we) (use|scan)|is .* (usable|on hold|held|out of service|broken|fixed|back|mended|sterilised|autoclaved|used|been used)|has .* (been|passed|come back)|(been|being) (used|sterilised|autoclaved|sent|washed|bagged)|which (scanner|one|of the scanners)/.test(
        text,
      );
    if (!asks || (!question && !/^(is|are|can|could|which|has|may|should|do|does|any)/.test(text)))
      return null;
    c.useTags(
      ...WH,
      'use',
      'sterile',
      'sterilise',
      'clean',
      'pass',
      'scan',
      'release',
      'hold',
      'unit',
      'wipe',
      'work',
      'repair',
      'open',
      'start',
      'finish',
      'patient',
      'take',
      'autoclave',
      'wash',
      'bag',
      'send',
      'sick',
      'fit',
      'run',
      'come',
      'fail',
      'calibrate',
      'steri',
      'go',
      'put',
      'cover',
      'heat',
      'shelf',
    );
    const named =
      c.entities('scanner').length > 0 ||
      c
        .entities('tips')
        .some(({ entity }) => entity.ids.length + entity.unknown.length + entity.choices.length > 0) ||
      c.at('scanner') >= 0 ||
      c.at('autoclave') >= 0 ||
      c.entities('autoclave').length > 0 ||
      c.at('caltip') >= 0 ||
      c.entities('no-scanner').length > 0;
    if (!named) return null;
    for (const one of [
      ...c.entities('time'),
      ...c.entities('person'),
      ...c.entities('room'),
      ...c.entities('site'),
    ])
      c.use(one.at);
    if (
      /which (scanner|of the scanners)|any scanners?|(a|any) scanner|either scanner|both scanners|scanners/.test(
        text,
      ) &&
      c.entities('scanner').length === 0
    ) {
      c.use(c.at('scanner'));
      return ask('ready', {}, 1.2);
    }
    const item = oneItem(c, { before: false, bare: true });
    if (item === null) {
      const own = c.at('autoclave') >= 0 ? autoclaveItem(c) : null;
      return own === null ? null : ask('ready', { item: own }, 1);
    }
    return ask('ready', { item: item.item }, 0.9, { item: item.said }, item.missing);
  },
};

/** Every kind of question, the surer before the looser. */
export const asks: readonly Ask[] = [
  help,
  why,
  who,
  how,
  trace,
  supply,
  record,
  due,
  last,
  history,
  load,
  tips,
  where,
  ready,
];

/** A word that is told by what stands beside it, though what was typed is another word or too short to tell. */
export interface PlaceRule {
  readonly word: string;
  /** What was typed for it, each a word by itself; words that are none are taken by their closeness. */
  readonly typed?: string;
  /** How close a word that is none must be (see `closeness`). */
  readonly near?: number;
  /** The word before: `#` for a number, `##` for one over 99, empty at the start of a sentence. */
  readonly before?: RegExp;
  readonly after?: RegExp;
  /** The word after that. */
  readonly further?: RegExp;
}

/** What is said of a thing: a denial before it must not be lost. */
const SAID =
  /^(pass\w*|past|fail\w*|good|ok|okay|fine|clear|clean\w*|dry|sterile|sterili[sz]ed|ready|safe|done|finish\w*|complet\w*|chang\w*|turn\w*|work\w*|success\w*|calibrat\w*|used?|usable|using|sent|send|wiped?|wiping|releas\w*|back|heat\w*|warm\w*|connect\w*|hold\w*|held|been|being|yet|sure|certain|wash\w*|bag\w*|pouch\w*|fit|fitted|mov\w*|scan\w*|inspect\w*|damag\w*|broken|open\w*|seal\w*|allowed|got|come|convinced|positive|negative)$/;
const BE_OR_DO =
  /^(did|does|do|was|is|are|were|am|has|have|had|could|can|would|will|should|be|been|'s|it's|its|i'm|that's)$/;

/** What does not go on with a day. */
const NO_HOUR =
  /^(?!(at|am|pm|morning|afternoon|evening|night|lunch|lunchtime|and|or|the|for|from|with|please|next|this|pls)$)[a-z]{3,}$/;

const NUMBER =
  /^(#|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|(twen|thir|for|fif|six|seven|eigh|nine)ty)$/;

export const PLACE_RULES: readonly PlaceRule[] = [
  { word: 'not', near: 3, after: SAID },
  {
    word: 'not',
    typed: 'hot nor note lot dot pot jot rot cot bot knot nit nut net mot tot noted ot nt ont',
    before: BE_OR_DO,
    after: SAID,
  },
  { word: 'not', typed: 'ot nt ont nto', after: SAID },
  { word: 'not', typed: 'now no got nots', before: /^(did|does|do|could|would)$/, after: SAID },
  { word: 'not', typed: 'hot bot nit ot nt nor note net nut no', before: /^#$/, after: /^#$/ },
  { word: 'not', typed: 'no', after: /^(sure|certain|convinced|yet)$/ },
  { word: 'not', typed: 'no', before: /^(#|is|are|was|were|'s)$/, after: SAID },
  {
    word: 'not',
    typed: 'hot nor bot lot',
    before: /^#$/,
    after: /^(sterile|passed|clean|dry|used|sent|washed|bagged)$/,
  },
  { word: 'not', typed: 'ot nt', before: /^(but|,|-|)$/, after: /^(#|tips?|[a-z])$/ },
  { word: 'not', typed: 'ot nt hot nor', before: /^(must|should|do)$/, after: /^be$/ },
  { word: 'and', typed: 'snd', before: /./ },
  { word: 'has', typed: 'as', before: /^$/, further: /^been$/ },
  { word: 'the', typed: 'tue', before: /^(use|in|to|at|from|on|started|with|of)$/, after: NO_HOUR },
  { word: 'bit', typed: 'bi', before: /^a$/, after: /^$/ },
  { word: 'think', typed: 'thin thing tink hink thik thank thins', before: /^i$/ },
  {
    word: 'use',
    typed: 'us sue usd ues',
    before: /^(not|don't|dont|never|nobody|anyone|please|cannot|can't)$/,
    after: /^(tips?|#|it|them|that|this|the|[a-z]\w*)$/,
  },
  {
    word: 'use',
    typed: 'uses',
    before: /^(not|don't|dont|nobody)$/,
    after: /^(tips?|#|it|them|that|this|the|[a-z]\w*)$/,
  },
  { word: 'used', typed: 'uses', before: /^never$/ },
  { word: 'use', typed: 'us sue', before: /^(i|we|to|you)$/, after: /^(tips?|#|it|again|them|[a-z])$/ },
  { word: 'use', typed: 'us sue', before: /^to$/, after: /^$/ },
  { word: 'use', typed: 'it', before: /^#$/, after: /^$/ },
  { word: 'used', typed: 'use us uses', before: /^(is|are|was|were|been|being|'s)$/, after: /^(,|and|)$/ },
  { word: 'used', typed: 'use', before: /^not$/, after: /^$/ },
  { word: 'pass', typed: 'passe passs', before: /^no$/ },
  {
    word: 'past',
    typed: 'pat pst pas pats part pass paste post pasta last past passt',
    near: 3,
    before: /^(half|quarter)$/,
  },
  {
    word: 'ago',
    typed: 'go',
    near: 3,
    before: /^(minutes?|mins?|hours?|hrs?|days?|weeks?|secs?|seconds?)$/,
    after: /^(,|and|)$/,
  },
  { word: 'eve', near: 3, before: /^(christmas|xmas|years?|new)$/ },
  { word: 'for', typed: 'or fo fr fir four fore far of', before: /^(degrees|c|degs?)$/, after: /^#$/ },
  { word: 'out', typed: 'our ou ut oit oot ot', after: /^of$/ },
  { word: 'where', typed: 'were wher wheres', before: /^$/, after: /^('s|is)$/ },
  {
    word: 'what',
    typed: 'hat',
    before: /^$/,
    after: /^(is|was|'s|are|were|did|do|does|kind|tips?|can|has|have)$/,
  },
  { word: 'that', typed: 'hat tat', before: /^(undo|scrap|scratch|ignore|delete|disregard|forget|cancel)$/ },
  {
    word: 'how',
    typed: 'ow hos ho hw yow hoe',
    before: /^(|,|-|me)$/,
    after: /^(do|to|long|many|should|can|did|does|often|is)$/,
  },
  { word: 'how', typed: 'now', before: /^(|knows?|remember|forgot|forgotten)$/, after: /^(do|to)$/ },
  { word: 'how', typed: 'hwo', after: /^(do|to|long|many|should|can|does|often)$/ },
  { word: 'wet', typed: 'we', before: /^(all|is|are|still|packs|pouch|bit|was|were)$/, after: /^$/ },
  { word: 'dry', near: 3, before: /^(and|everything|all|,|ok|is|good|are|bone|\.|)$/, after: /^(,|and|)$/ },
  { word: 'good', typed: 'goo', before: /^a$/ },
  { word: 'lens', typed: 'len', after: /^(on|of|and|is|was)$/ },
  {
    word: 'tip',
    typed: 'trip til rip lip tin tie tio',
    before: /^(|,|used|binned|bined|sent|washed|wiped)$/,
    after: /^#$/,
  },
  { word: 'tips', typed: 'tis', after: /^#$/ },
  { word: 'tip', typed: 'trip', after: /^#$/ },
  { word: 'same', typed: 'sme sane sam sae saem', after: /^(pt|px|patient|person)$/ },
  { word: 'for', typed: 'or fo fr fir fore four', before: /^##$/, after: /^#$/ },
  { word: 'and', typed: 'an ad nd', after: /^(quarter|all)$/ },
  { word: 'and', typed: 'nd ad an ands adn anf', after: /^a$/, further: /^half$/ },
  { word: 'and', typed: 'an nd ad', before: /^hundred$/ },
  { word: 'point', near: 3, before: NUMBER, after: NUMBER },
  { word: 'this', typed: 'thus thks tis', after: /^(morning|afternoon|arvo|evening|week|am|minute)$/ },
  {
    word: 'from',
    typed: 'fro',
    before: /^(back|returned|out|taken|come|came|fresh|collected|up)$/,
    after: /^(the|our|steri|decon|autoclave)$/,
  },
  {
    word: 'bar',
    typed: 'ar ba br abr bra bae gar nar var bat',
    before: /^(tips?|ones?|used|all|sterile|washed|bagged|sent|dirty|everything)$/,
    after: /^(#|[a-z])$/,
  },
  {
    word: 'sterile',
    typed: 'steri',
    before: /^(many|any|enough|no|more|some|which|what)$/,
    after: /^tips?$/,
  },
  { word: 'now', typed: 'ow nw', before: /./, after: /^$/ },
  { word: 'could', typed: 'cold', after: /^(someone|somebody|anyone|anybody|you)$/ },
  { word: 'the', typed: 'tue he', after: /^(helix|mill|scanner|load|autoclave|lens|base|floor|way|shelf)$/ },
  { word: 'thru', typed: 'thr', before: /^(#|one|two|three|four|five|six|seven|eight|nine|ten)$/ },
  { word: 'may', typed: 'amy', after: /^be$/ },
  { word: 'lens', typed: 'len', before: /^(the|'s)$/ },
  { word: 'out', typed: 'ou ut', before: /^#$/ },
  { word: 'off', typed: 'oft of', before: /^(is|'s|are)$/, after: /^$/ },
  { word: 'dirty', typed: 'dirt', before: /^(is|are|still|'s)$/, after: /^(,|and|)$/ },
  { word: 'change', typed: 'chang', before: /^not$/ },
  { word: 'used', typed: 'use', before: /^(the|all)$/, after: /^(tips|ones)$/ },
  { word: 'all', typed: 'al', after: /^(done|the|good|tips|used)$/ },
];

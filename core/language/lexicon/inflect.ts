/** How a word of the lexicon stands: base, third person, past or participle, -ing, or a noun or particle. */
export type Form = 'b' | 's' | 'd' | 'g' | 'n';

/** Base → third person, past and participle (each may have several), -ing; only what the rules below get wrong. */
const IRREGULAR: Readonly<Record<string, readonly [string, string, string]>> = {
  take: ['takes', 'took taken taked', 'taking'],
  bring: ['brings', 'brought', 'bringing'],
  go: ['goes', 'went gone goed', 'going'],
  come: ['comes', 'came come', 'coming'],
  get: ['gets', 'got gotten', 'getting'],
  leave: ['leaves', 'left', 'leaving'],
  send: ['sends', 'sent sended', 'sending'],
  put: ['puts', 'put', 'putting'],
  set: ['sets', 'set', 'setting'],
  shut: ['shuts', 'shut', 'shutting'],
  hit: ['hits', 'hit', 'hitting'],
  split: ['splits', 'split', 'splitting'],
  give: ['gives', 'gave given', 'giving'],
  throw: ['throws', 'threw thrown chucked', 'throwing'],
  find: ['finds', 'found', 'finding'],
  lose: ['loses', 'lost', 'losing'],
  break: ['breaks', 'broke broken', 'breaking'],
  fall: ['falls', 'fell fallen', 'falling'],
  do: ['does', 'did done', 'doing'],
  have: ['has', 'had', 'having'],
  see: ['sees', 'saw seen', 'seeing'],
  run: ['runs', 'ran run', 'running'],
  begin: ['begins', 'began begun', 'beginning'],
  show: ['shows', 'showed shown', 'showing'],
  teach: ['teaches', 'taught', 'teaching'],
  tear: ['tears', 'tore torn', 'tearing'],
  drive: ['drives', 'drove driven', 'driving'],
  hold: ['holds', 'held', 'holding'],
  keep: ['keeps', 'kept', 'keeping'],
  stick: ['sticks', 'stuck', 'sticking'],
  tell: ['tells', 'told', 'telling'],
  say: ['says', 'said', 'saying'],
  make: ['makes', 'made', 'making'],
  know: ['knows', 'knew known', 'knowing'],
  think: ['thinks', 'thought', 'thinking'],
  read: ['reads', 'read', 'reading'],
  buy: ['buys', 'bought', 'buying'],
  lend: ['lends', 'lent', 'lending'],
  hand: ['hands', 'handed', 'handing'],
  hang: ['hangs', 'hung', 'hanging'],
  pick: ['picks', 'picked', 'picking'],
  let: ['lets', 'let', 'letting'],
  pay: ['pays', 'paid', 'paying'],
  write: ['writes', 'wrote written', 'writing'],
  eat: ['eats', 'ate eaten', 'eating'],
  meet: ['meets', 'met', 'meeting'],
  forget: ['forgets', 'forgot forgotten', 'forgetting'],
  swap: ['swaps', 'swapped', 'swapping'],
  cal: ['cals', 'caled cald', 'caling'],
  spin: ['spins', 'spun', 'spinning'],
  bind: ['binds', 'bound', 'binding'],
  wind: ['winds', 'wound', 'winding'],
  slide: ['slides', 'slid', 'sliding'],
  catch: ['catches', 'caught', 'catching'],
  grow: ['grows', 'grew grown', 'growing'],
  freeze: ['freezes', 'froze frozen', 'freezing'],
  reset: ['resets', 'reset', 'resetting'],
  rerun: ['reruns', 'reran', 'rerunning'],
  withdraw: ['withdraws', 'withdrew withdrawn', 'withdrawing'],
};

/** Verbs whose last consonant doubles: the rule by stress cannot be seen from the letters. */
const DOUBLES = new Set(
  'wrap pop bag rebag re-bag lob lug bin drop swap slip clip unclip fit chip scrub rip zip tag log stop plug unplug fog tip snap cap pack-up nip whip spot dip mop plan ship ban nab bung pot jam skip trip chuck-in unwrap cancel travel label reschedul refit scan shop'.split(
    ' ',
  ),
);

function past(base: string): string {
  if (DOUBLES.has(base)) return `${base}${base.at(-1)}ed`;
  if (base.endsWith('e')) return `${base}d`;
  if (/[^aeiou]y$/.test(base)) return `${base.slice(0, -1)}ied`;
  return `${base}ed`;
}

function ing(base: string): string {
  if (DOUBLES.has(base)) return `${base}${base.at(-1)}ing`;
  if (base.endsWith('e') && !base.endsWith('ee')) return `${base.slice(0, -1)}ing`;
  return `${base}ing`;
}

/** Third person of a verb or plural of a noun. */
export function plural(base: string): string {
  if (/[^aeiou]y$/.test(base)) return `${base.slice(0, -1)}ies`;
  return /(s|x|z|ch|sh)$/.test(base) ? `${base}es` : `${base}s`;
}

/** Every form of a verb, the first word of a longer one ("wipe down") taking the endings. */
export function formsOf(lemma: string): [string, Form][] {
  const [head = '', ...rest] = lemma.split(' ');
  const tail = rest.length > 0 ? ` ${rest.join(' ')}` : '';
  const odd = IRREGULAR[head];
  const list: [string, Form][] = [[head, 'b']];
  list.push([odd?.[0] ?? plural(head), 's']);
  for (const form of (odd?.[1] ?? past(head)).split(' ')) list.push([form, 'd']);
  for (const form of (odd?.[2] ?? ing(head)).split(' ')) list.push([form, 'g']);
  return list.map(([form, how]) => [form + tail, how]);
}

import { isMeasured, longNumber } from './numbers.ts';
import { type Finder, type Found, glued, isNumber, matchAt, type Scan, textAt } from './scan.ts';

/** "Load 118", "cycle no. 118", "loads 118 and 119", "big/118". */
export const loads: Finder = (scan, from) => {
  const match = matchAt(scan, from);
  const noun = match?.senses.some((s) => s.tag === 'load' && s.sort === 'noun') ? match.to : -1;
  if (noun < 0) return numberFirst(scan, from);
  let at = noun;
  while (/^(no|number|num|nr|#|:|id)$/.test(textAt(scan, at))) at += textAt(scan, at + 1) === '.' ? 2 : 1;
  const autoclave = autoclaveSlash(scan, at);
  const first = idAt(scan, autoclave?.to ?? at);
  if (first === null) return null;
  const ids = [first.id];
  let to = first.to;
  while (/^(and|&|,|\+)$/.test(textAt(scan, to)) && /s$/.test(textAt(scan, noun - 1))) {
    const more = idAt(scan, to + 1);
    if (more === null) break;
    ids.push(more.id);
    to = more.to;
  }
  return {
    entity: { is: 'load', ids, named: true, ...(autoclave === null ? {} : { autoclave: autoclave.id }) },
    to,
  };
};

function idAt(scan: Scan, at: number): { id: string; to: number } | null {
  const text = textAt(scan, at);
  if (/^[a-z]{1,2}$/.test(text) && isNumber(scan, at + 1) && glued(scan, at + 1)) {
    const token = scan.tokens[at];
    const typed = token === undefined ? text : scan.note.slice(token.start, token.end);
    return { id: typed + textAt(scan, at + 1), to: at + 2 };
  }
  const number = longNumber(scan, at);
  const of = textAt(scan, number?.to ?? -1) === 'of';
  if (number === null || isMeasured(scan, number.to, of)) return null;
  if (number.words && number.text.length > 4) return null;
  return { id: number.text.replace(/^0+(?=\d)/, ''), to: number.to };
}

function autoclaveSlash(scan: Scan, at: number): { id: string; to: number } | null {
  const match = matchAt(scan, at);
  const sense = match?.senses.find((s) => s.tag === 'autoclave-name');
  if (match === null || sense === undefined || textAt(scan, match.to) !== '/') return null;
  return { id: sense.ref, to: match.to + 1 };
}

/** "118 load", "big/118". */
function numberFirst(scan: Scan, from: number): Found | null {
  const clock = /^[:.]$/.test(textAt(scan, from - 1)) && isNumber(scan, from - 2);
  if (isNumber(scan, from) && textAt(scan, from).length >= 2 && !clock) {
    const text = textAt(scan, from + 1);
    if (text !== 'load' && text !== 'cycle' && text !== 'batch') return null;
    return { entity: { is: 'load', ids: [textAt(scan, from)], named: true }, to: from + 2 };
  }
  const slash = autoclaveSlash(scan, from);
  if (slash === null) return null;
  const id = idAt(scan, slash.to);
  return id === null
    ? null
    : { entity: { is: 'load', ids: [id.id], named: true, autoclave: slash.id }, to: id.to };
}

/** More than this in one stretch is a slip of the keyboard, not a box of tips. */
const MOST = 999;

/**
 * The ids that `1-12`, `N1-N4`, `N1-4`, `01-12`, `1 to 12`, `5` or several of these with commas between stand for, in
 * order. `null` where a part is no id or stretch: the second value then says what would be right.
 */
export function expandTips(text: string): { readonly ids: readonly string[] } | { readonly right: string } {
  const parts = text
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length === 0) return { right: 'an id such as 5, or a stretch such as 1-12' };
  const ids: string[] = [];
  for (const part of parts) {
    const expanded = expandPart(part);
    if ('right' in expanded) return expanded;
    ids.push(...expanded.ids);
  }
  return { ids };
}

function expandPart(part: string): { readonly ids: readonly string[] } | { readonly right: string } {
  const stretch =
    /^([\p{L}_.]*-?)(\d{1,6})\s*(?:-|–|\.\.|\bto\b|\bthrough\b)\s*([\p{L}_.]*-?)(\d{1,6})$/u.exec(part);
  if (stretch === null) {
    return isId(part) ? { ids: [part] } : { right: 'letters and numbers without blanks, such as 5 or N1' };
  }
  const [, prefix = '', from = '', again = '', to = ''] = stretch;
  if (again !== '' && again !== prefix)
    return { right: `both ends alike, such as ${prefix}${from}-${prefix}${to}` };
  const first = Number(from);
  const last = Number(to);
  if (last < first) return { right: `${prefix}${to}-${prefix}${from}` };
  if (last - first >= MOST) return { right: `a stretch of at most ${MOST} tips` };
  // "01-12" means 01, 02, …: the width of the first number is kept where it is written with a zero.
  const width = from.startsWith('0') ? from.length : 1;
  const ids = Array.from({ length: last - first + 1 }, (_, step) => {
    return `${prefix}${String(first + step).padStart(width, '0')}`;
  });
  return { ids };
}

/** Ids are typed in notes and stand in items such as `load:big/118`, so blanks, colons and slashes are kept out. */
export function isId(text: string): boolean {
  return /^[\p{L}\p{N}][\p{L}\p{M}\p{N}_.-]{0,39}$/u.test(text);
}

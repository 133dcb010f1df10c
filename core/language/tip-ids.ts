/** How an id is compared: small letters, no marks, no leading zeros ("T-04" is "t4"). */
export function idKey(id: string): string {
  return id
    .toLowerCase()
    .replace(/[^a-z0-9]/g, '')
    .replace(/(^|[a-z])0+(?=\d)/g, '$1');
}

/** Orders ids as people do: numbers by value, letters before them by the alphabet. */
export function compareIds(a: string, b: string): number {
  const [, lettersA = '', digitsA = '', restA = ''] = /^(\D*)(\d*)(.*)$/.exec(a) ?? [];
  const [, lettersB = '', digitsB = '', restB = ''] = /^(\D*)(\d*)(.*)$/.exec(b) ?? [];
  if (lettersA !== lettersB) return lettersA < lettersB ? -1 : 1;
  if (digitsA !== digitsB) return Number(digitsA) - Number(digitsB) || (digitsA < digitsB ? -1 : 1);
  if (restA === restB) return 0;
  return restA < restB ? -1 : 1;
}

/** The practice's tip ids and the ways they are typed. */
export class TipIds {
  readonly all: readonly string[];
  readonly #whole = new Map<string, string>();
  readonly #byNumber = new Map<string, string[]>();
  /** Letters that stand before numbers in these ids. */
  readonly prefixes = new Set<string>();
  /** The one prefix of every id, where they share one; empty where they are plain numbers; `null` where they differ. */
  readonly sharedPrefix: string | null;

  constructor(ids: readonly string[]) {
    this.all = [...ids].sort(compareIds);
    const heads = new Set<string>();
    for (const id of ids) {
      this.#whole.set(idKey(id), id);
      const [, letters = '', digits] = /^([a-z]*)(\d+)$/.exec(idKey(id)) ?? [];
      if (digits === undefined) continue;
      heads.add(id.slice(0, id.length - (/\d+$/.exec(id)?.[0].length ?? 0)));
      if (letters !== '') this.prefixes.add(letters);
      this.#byNumber.set(digits, [...(this.#byNumber.get(digits) ?? []), id]);
    }
    this.sharedPrefix = heads.size === 1 ? ([...heads][0] ?? '') : heads.size === 0 ? '' : null;
  }

  /** The ids that letters and digits as typed may mean: one where it is known, none, or several to choose from. */
  find(letters: string, digits: string): readonly string[] {
    const plain = digits.replace(/^0+(?=\d)/, '');
    const whole = this.#whole.get(letters + plain);
    if (whole !== undefined) return [whole];
    if (letters === '' || (letters === 't' && !this.prefixes.has('t')))
      return this.#byNumber.get(plain) ?? [];
    return [];
  }

  /** What an id not yet known is called as this practice writes its own ("13" beside T1 to T12 is T13). */
  write(letters: string, digits: string): string {
    const plain = digits.replace(/^0+(?=\d)/, '');
    if (letters !== '' && !(letters === 't' && !this.prefixes.has('t'))) {
      const shared = this.sharedPrefix ?? '';
      return shared !== '' && idKey(`${shared}0`) === `${letters}0`
        ? shared + plain
        : letters.toUpperCase() + plain;
    }
    return (this.sharedPrefix ?? '') + plain;
  }
}

/** One word, number or mark of a note. Offsets count UTF-16 units of the note as it was typed. */
export interface Token {
  /** Folded: lower case, straight quotes, plain dashes. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly kind: 'word' | 'number' | 'mark';
  /** True when white space stands before it. */
  readonly spaced: boolean;
}

/** Puts one name into the table: the words, what sort of thing they name, and its id. */
export type AddName = (words: string, tag: string, ref: string) => void;

/** `byId` leaves out ids that are small words of English. */
export interface Adding {
  readonly name: AddName;
  readonly byId: AddName;
}

/** Numbers as they are said in names. */
export const NUMBERS = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
];

/** Version of the grammar that a turn was read by; it is kept with the turn. */
export const GRAMMAR_VERSION = '1';

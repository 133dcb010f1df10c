/** Kept with every turn that these rules made, so that an old post can be explained by the rules of its day. */
export const RULES_VERSION = '1';

import { asksAt, form, type Phrases } from './phrase.ts';

/** Tips with the word for them left out: only tips are spoken of so among us. */
export const tips: Phrases = {
  name: 'ask:tips',
  phrases: [
    {
      form: form(
        'whats (?:still )?(?:dirty|used|needs? (?:sterilising|autoclaving|washing|to go in autoclave|to go off))(?: then)?',
        'what (?:still )?needs (?:sterilising|autoclaving|washing|bagging|to go in autoclave|to go in|to be sterilised|to be autoclaved)',
        'whats (?:left |waiting )?(?:to (?:sterilise|autoclave|wash|bag|go in autoclave))',
        '(?:which|what) tips (?:should|do|must|shall|can) (?:i|we) (?:need to |have to )?(?:send|wash|autoclave|bag|put in|load|reprocess)(?: (?:off|in|next|in next load))*',
        'whats (?:still )?(?:to be |waiting to be |needing to be )(?:sterilised|washed|bagged|autoclaved|cleaned|reprocessed)',
        '(?:which|what) tips are (?:still )?waiting(?: (?:to go in|to be washed|to be sent|to be sterilised|for a wash|to go))?',
        'dirty tips',
        'used tips',
      ),
      asked: true,
      make: asksAt('tips', { filter: 'used' }),
    },
    {
      form: form(
        'whats (?:still )?(?:clean|sterile|ready to use|good to use|available)(?: and (?:ready|sterile|on shelf))?',
        "(?:whats|what have we got) (?:left )?(?:clean|sterile|on shelf|that's clean|that's sterile)",
      ),
      asked: true,
      make: asksAt('tips', { filter: 'sterile' }),
    },
  ],
};

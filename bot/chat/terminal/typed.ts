/** What one typed line is: a note, or something that a phone does by tapping, written with a slash. */
export type Typed =
  | { readonly does: 'note'; readonly text: string }
  | { readonly does: 'reply'; readonly text: string; readonly post?: number }
  | { readonly does: 'react'; readonly emoji: string; readonly post?: number }
  | { readonly does: 'edit'; readonly text: string }
  | { readonly does: 'delete' }
  | { readonly does: 'as'; readonly name: string }
  | { readonly does: 'chat'; readonly room: string }
  | { readonly does: 'keys' }
  | { readonly does: 'quit' }
  | { readonly does: 'wrong'; readonly say: string };

export const KEYS = [
  'Type a note, or: help',
  '/reply [number] TEXT   answer a post of the bot (the latest when no number is given)',
  '/react [number] ✅      react to a post of the bot',
  '/edit TEXT             put your last note right',
  '/delete                take your last note away',
  '/as NAME               be someone else of the practice',
  '/chat ROOM             go to another chat room',
  '/quit                  leave; everything is kept',
] as const;

/** Reads one line typed in the terminal room. */
export function readTyped(line: string): Typed {
  if (!line.startsWith('/')) return { does: 'note', text: line };
  const [, word = '', rest = ''] = /^\/(\S*)\s*([\s\S]*)$/.exec(line) ?? [];
  const [, number, after = ''] = /^(\d+)\s+([\s\S]*)$/.exec(rest) ?? [undefined, undefined, rest];
  const post = number === undefined ? {} : { post: Number(number) };
  switch (word) {
    case 'reply':
      return after === ''
        ? { does: 'wrong', say: 'What is the answer? For example: /reply yes' }
        : { does: 'reply', text: after, ...post };
    case 'react':
      return after === ''
        ? { does: 'wrong', say: 'With what? For example: /react ✅' }
        : { does: 'react', emoji: after, ...post };
    case 'edit':
      return rest === ''
        ? { does: 'wrong', say: 'What should your last note read? For example: /edit used tip 5' }
        : { does: 'edit', text: rest };
    case 'delete':
      return { does: 'delete' };
    case 'as':
      return { does: 'as', name: rest };
    case 'chat':
      return { does: 'chat', room: rest };
    case 'quit':
    case 'exit':
      return { does: 'quit' };
    case 'keys':
      return { does: 'keys' };
    default:
      return { does: 'wrong', say: `"/${word}" is not known here. ${KEYS[0]}; /keys lists the rest.` };
  }
}

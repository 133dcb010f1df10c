import type { Practice } from '../../practice/practice.ts';
import { lines } from '../../words/message.ts';
import type { Speak } from '../speech.ts';

/** Something that the practice file does not have: nothing was recorded of it, and what there is is named. */
export const speakUnknownItem: Speak<'unknown-item'> = ({ item, items }, view) => {
  const [kind = '', id = ''] = item.split(/:(.*)/s);
  const message = lines(
    [{ strong: `I do not know ${kind.replace('-', ' ')} ${id}`.trimEnd() }, '; nothing is recorded of it.'],
    known(view.practice, kind),
  );
  return [{ about: 'question', items, message, mentions: [] }];
};

function known({ scanners, tips, autoclaves }: Practice, kind: string): string {
  const ending = 'Edit your note to say which it was.';
  const names = (list: readonly { readonly name: string }[]) => list.map(({ name }) => name).join(', ');
  if (kind === 'scanner' || kind === 'calibration-tip') return `Scanners here: ${names(scanners)}. ${ending}`;
  if (kind === 'autoclave' && autoclaves.length > 0)
    return `Autoclaves here: ${names(autoclaves)}. ${ending}`;
  if (kind === 'tip') return `The practice file has ${tips.length} tips. ${ending}`;
  return ending;
}

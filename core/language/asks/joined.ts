import type { Part } from '../part.ts';
import type { Segment } from '../segments.ts';

/** Segments in one, with what joins them. */
export function joined(segments: readonly Segment[]): readonly Part[] {
  return segments.flatMap((s, i) => (i === 0 ? s.parts : [jointPart(s), ...s.parts]));
}

/** A joint kept as a part, so that words on both sides do not run together. */
function jointPart(segment: Segment): Part {
  return {
    from: segment.parts[0]?.from ?? 0,
    to: segment.parts[0]?.from ?? 0,
    text: segment.joint,
    senses: [GLUE],
    mark: false,
    unknown: false,
  };
}
const GLUE = { sort: 'glue', tag: 'glue', form: '', ref: '' } as const;

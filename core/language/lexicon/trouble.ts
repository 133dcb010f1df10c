/** Senses of what goes wrong with a tip or scanner, and of what is done for it: they mark the cause of a hold or a retirement. */
export const TROUBLE: readonly string[] =
  'crack scratch tear fog sick dead cold disconnect fray drop fall fail debris use strip pouch mirror hold lens retire repair calibrate'.split(
    ' ',
  );

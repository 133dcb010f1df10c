import { scannerWords } from '../../rules/tips/tip-words.ts';
import { because, type FactWords, tipsWords } from './parts.ts';

export const tipFacts = {
  used: (practice, { tips, scanner }) =>
    `${tipsWords(tips)} used${scanner === undefined ? '' : ` on ${scannerWords(practice, scanner)}`}`,
  inspected: (_, { tips, outcome }) => `${tipsWords(tips)} inspected: ${outcome}`,
  fitted: (practice, { tip, scanner }) => `tip ${tip} fitted to ${scannerWords(practice, scanner)}`,
  removed: (_, { tips }) => `${tipsWords(tips)} taken off`,
  washed: (_, { tips }) => `${tipsWords(tips)} washed`,
  bagged: (_, { tips }) => `${tipsWords(tips)} bagged`,
  sent: (_, { tips }) => `${tipsWords(tips)} sent to the autoclave`,
  sterile: (_, { tips }) => `${tipsWords(tips)} said to be sterile`,
  retired: (_, { tips, reason }) => `${tipsWords(tips)} retired${because(reason)}`,
  added: (_, { tips }) => `${tipsWords(tips)} new here`,
} satisfies FactWords;

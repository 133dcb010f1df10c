/** What is said when a scanner leaves a site and when it has come to another. */
export { arrivalSpeeches } from './arrival.ts';
export { departureSpeeches } from './departure.ts';

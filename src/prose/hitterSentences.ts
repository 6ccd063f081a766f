export { golferWords, onlyThese, type GolferWords } from './english/golfers.ts';

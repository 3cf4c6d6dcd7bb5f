// A door of its own, so that these sentences are fetched only when something is wrong.
export { explainProblem } from 'vitrose/words';

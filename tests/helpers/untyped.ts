/** The typed questions, for untyped specs: bad ones, and specs put together by hand. */
import * as choose from '../../src/choose/index.js';
import type { SpecInput } from '../../src/spec/index.js';
import * as typed from '../../src/study/index.js';

type Untyped<P> = Omit<P, 'base'> & { readonly base: unknown };
type Specs = Readonly<Record<string, SpecInput>>;

export type StudyPlan = Untyped<typed.StudyPlan>;
export const study = (plan: StudyPlan) => typed.study(plan as typed.StudyPlan);
export const sample = (plan: StudyPlan, figure: string, shares?: readonly number[]) =>
  typed.sample(plan as typed.StudyPlan, figure, shares);
export const oneAtATime = (plan: Omit<StudyPlan, 'design'>, figure: string) =>
  typed.oneAtATime(plan as Omit<typed.StudyPlan, 'design'>, figure);
export const holdingInterval = (base: unknown, path: string) => typed.holdingInterval(base as SpecInput, path);
export const solveFor = (base: unknown, ...rest: Tail<Parameters<typeof typed.solveFor>>) =>
  typed.solveFor(base as SpecInput, ...rest);
type Tail<P extends readonly unknown[]> = P extends readonly [unknown, ...infer R] ? R : never;

export const compare = (specs: Readonly<Record<string, unknown>>) => choose.compare(specs as Specs);
export const oneClassUp = (now: unknown, next: unknown) => choose.oneClassUp(now as SpecInput, next as SpecInput);
export const remedies = (spec: unknown) => choose.remedies(spec as SpecInput);

/** What a test asks of a yard: specs and pieces of which it knows nothing. */
export type StockQuestion = Omit<choose.StockQuestion, 'stock' | 'tow' | 'cargo'> & {
  readonly stock: Readonly<Record<string, unknown>>;
  readonly tow?: unknown;
  readonly cargo: readonly unknown[];
};
export const fitStock = (question: StockQuestion) => choose.fitStock(question as choose.StockQuestion);

/** What a thread says of the question it was sent: how far it is, any number of times, and last the answer. */
import type { Answers, Subject } from '../actions/index.ts';
import type { PlanProgress } from '../husbandry/plan/index.ts';

export type Said = { readonly progress: PlanProgress } | { readonly answer: Answers[Subject] };

import { bestPlan, buyingRoom, laidOut } from './support/plan/planned.ts';
for (const weeks of [8, 12]) {
  const t = performance.now();
  const { laid, problem } = laidOut(buyingRoom(), weeks);
  const t1 = performance.now();
  const best = bestPlan(problem);
  console.log(weeks, (t1 - t) | 0, (performance.now() - t1) | 0, best.cost, best.bought, laid.periods.map((p) => p.days).join(' '), laid.usualCents);
}

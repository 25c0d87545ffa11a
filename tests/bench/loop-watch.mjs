// Loaded into the program under test before anything else: the longest its event loop was held up, told when asked.
import { monitorEventLoopDelay } from 'node:perf_hooks';

const delay = monitorEventLoopDelay({ resolution: 1 });
const NANOSECONDS = 1e6;

process.on('message', () => {
  process.send?.({ maxMs: delay.max / NANOSECONDS, meanMs: delay.mean / NANOSECONDS });
  delay.reset();
});
delay.enable();

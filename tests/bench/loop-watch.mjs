// Loaded into the program under test before anything else: the longest its event loop was held up, told when asked.
import { monitorEventLoopDelay } from 'node:perf_hooks';

const delay = monitorEventLoopDelay({ resolution: 1 });
const PER_MS = 1e6;

process.on('message', () => {
  process.send?.({ maxMs: delay.max / PER_MS, meanMs: delay.mean / PER_MS });
  delay.reset();
});
delay.enable();

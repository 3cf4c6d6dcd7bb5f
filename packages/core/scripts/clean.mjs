// Two builds share dist/, so neither may clear it: it is cleared before both.
import { rmSync } from 'node:fs';

rmSync(new URL('../dist', import.meta.url), { recursive: true, force: true });

import { defineConfig } from 'tsup';

export default defineConfig({
  entry: { 'vitrose-plan': 'src/vitrose-plan.ts' },
  format: ['esm'],
  target: 'node20',
  sourcemap: true,
  clean: true,
});

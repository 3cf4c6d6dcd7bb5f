// Runs Astro with its telemetry off, whatever the shell.
//   node scripts/astro.mjs build

process.env.ASTRO_TELEMETRY_DISABLED = '1';
await import('../node_modules/astro/astro.js');

/**
 * The sugar rule at the size of a favicon: two strips, one slid down, and the line across both.
 *
 * It brings its own colours, and dark ones for a dark bar of tabs.
 *
 * @returns an SVG document.
 */
export function ruleFaviconSvg(): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><style>.s{fill:#fbfcfc;stroke:#17242e}.h{stroke:#8a4300}@media(prefers-color-scheme:dark){.s{fill:#16222b;stroke:#e9eff2}.h{stroke:#f4b357}}</style><path class="s" stroke-width="2" d="M4 27V6a5 5 0 0 1 10 0V27Z"/><path class="s" stroke-width="2" d="M18 31V10a5 5 0 0 1 10 0V31Z"/><path class="s" stroke-width="2" d="M18 14h4M18 26h4"/><path class="h" stroke-width="3.5" d="M1 20H31"/></svg>\n`;
}

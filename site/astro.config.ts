import { fileURLToPath } from 'node:url';
import preact from '@astrojs/preact';
import starlight from '@astrojs/starlight';
import AstroPWA from '@vite-pwa/astro';
import { defineConfig } from 'astro/config';
import { contentSecurityPolicy } from './integrations/csp.js';
import { sidebar } from './src/words/sidebar.js';

/** Where the site is served from: `/` unless told otherwise. */
const base = `/${process.env.VITROSE_BASE ?? ''}/`.replace(/\/{2,}/g, '/');

const source = (path: string): string =>
  fileURLToPath(new URL(`../packages/${path}`, import.meta.url));

export default defineConfig({
  base,
  // The offline list names pages as readers ask for them.
  trailingSlash: 'always',
  vite: {
    resolve: {
      // From source rather than from dist, which is one file: two pages that share a function of it
      // would share all of it, and the front page would carry the whole of the bench.
      alias: [
        { find: /^vitrose$/, replacement: source('core/src/index.ts') },
        {
          find: /^vitrose\/(documents|words|sources)$/,
          replacement: source('core/src/$1/index.ts'),
        },
        { find: /^@vitrose\/figures$/, replacement: source('figures/src/index.ts') },
      ],
    },
  },
  devToolbar: { enabled: false },
  build: { assets: 'assets' },
  // The order counts: the policy hashes what the documentation shell has written, and the offline
  // list is drawn up from the pages as the policy left them.
  integrations: [
    starlight({
      title: 'Vitrose',
      description: 'The science of boiled sugar.',
      favicon: '/favicon.svg',
      customCss: ['./src/styles/tokens.css', './src/styles/starlight.css'],
      credits: false,
      disable404Route: true,
      pagination: false,
      components: {
        Head: './src/shell/Head.astro',
        SiteTitle: './src/shell/SiteTitle.astro',
        PageTitle: './src/shell/PageTitle.astro',
        Footer: './src/shell/Footer.astro',
      },
      expressiveCode: {
        themes: ['github-light', 'github-dark'],
        // A line that runs off the page is read by nobody, and a box that scrolls traps the keys.
        defaultProps: { wrap: true },
        styleOverrides: {
          borderRadius: '0',
          borderColor: 'var(--edge)',
          codeBackground: 'var(--sheet)',
          codeFontFamily: 'var(--mono)',
          frames: {
            shadowColor: 'transparent',
            frameBoxShadowCssValue: 'none',
            editorActiveTabBackground: 'var(--sheet)',
            editorTabBarBackground: 'var(--ground)',
            terminalBackground: 'var(--sheet)',
            terminalTitlebarBackground: 'var(--ground)',
          },
        },
      },
      sidebar,
    }),
    preact({ include: ['**/*.tsx'] }),
    contentSecurityPolicy(),
    AstroPWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Vitrose',
        short_name: 'Vitrose',
        description: 'The science of boiled sugar, and a plan for your batch.',
        start_url: base,
        scope: base,
        display: 'standalone',
        background_color: '#eef2f4',
        theme_color: '#eef2f4',
        icons: [{ src: 'favicon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      workbox: {
        navigateFallback: null,
        // The shell, the front page and the bench; evidence as it is visited. A page that answers
        // 404 would stop the whole of it.
        globPatterns: ['index.html', 'bench/**/*.html', 'assets/*.{js,css,woff2}', 'favicon.svg'],
        globIgnores: ['404.html'],
        runtimeCaching: [
          {
            urlPattern: ({ request, sameOrigin }) => sameOrigin && request.method === 'GET',
            handler: 'StaleWhileRevalidate',
            options: { cacheName: 'visited', expiration: { maxEntries: 300 } },
          },
        ],
      },
    }),
  ],
});

import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import sitemap from '@astrojs/sitemap';
import starlight from '@astrojs/starlight';
import { defineConfig } from 'astro/config';
import { floors } from './build/floors.ts';
import { headersFile } from './build/headers-file.ts';
import { offline } from './build/offline.ts';
import { pagePolicy } from './build/page-policy.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const pagesIn = (directory: string) => [{ autogenerate: { directory } }];

/** The look first, print last; between them what calculators bring along. `embed.css` stays out. */
const ends = ['site.css', 'tool.css', 'print.css', 'embed.css'];
const own = readdirSync(here('./src/styles')).filter((file) => !ends.includes(file));
const sheets = ['site.css', 'tool.css', ...own.sort(), 'print.css'];

/** Reachable by address only: shown neither in search nor in the sitemap. */
const unlisted = ['/states/', '/embed/'];

export default defineConfig({
  site: 'https://backhalf.example',
  // No markup here needs inline styles, which the policy below refuses; Shiki's would.
  markdown: { syntaxHighlight: 'prism' },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
      ],
      // Search runs a small WebAssembly module of the site's own.
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] },
    },
  },
  integrations: [
    starlight({
      title: 'backhalf',
      description: 'Swim pacing math: what practice shows, turned into what a race can hold.',
      favicon: '/favicon.svg',
      head: [
        { tag: 'link', attrs: { rel: 'manifest', href: '/site.webmanifest' } },
        // The favicon's drawing: a home screen there takes no SVG.
        { tag: 'link', attrs: { rel: 'apple-touch-icon', href: '/apple-touch-icon.png' } },
      ],
      routeMiddleware: './src/sidebar.ts',
      customCss: sheets.map((file) => `./src/styles/${file}`),
      expressiveCode: false,
      credits: false,
      components: {
        Footer: './src/components/Footer.astro',
        Header: './src/components/Header.astro',
        Hero: './src/components/Hero.astro',
        MobileMenuFooter: './src/components/MobileMenuFooter.astro',
        Search: './src/components/Search.astro',
        SiteTitle: './src/components/SiteTitle.astro',
        ThemeProvider: './src/components/ThemeProvider.astro',
        ThemeSelect: './src/components/ThemeSelect.astro',
      },
      sidebar: [
        { label: 'Calculators', items: pagesIn('calculators') },
        { label: 'Learn', items: pagesIn('learn') },
        { label: 'Explain', items: pagesIn('explain') },
        {
          label: 'Use the library',
          items: [
            ...pagesIn('library'),
            {
              label: 'API reference',
              collapsed: true,
              items: [
                { label: 'Every name', slug: 'api' },
                ...floors.map(({ folder, label }) => ({
                  label,
                  collapsed: true,
                  items: pagesIn(`api/${folder}`),
                })),
              ],
            },
          ],
        },
        { label: 'Verification', items: pagesIn('verification') },
        { label: 'About', items: ['references', 'safety'] },
      ],
    }),
    mdx(),
    preact(),
    sitemap({
      filter: (page) => !unlisted.some((path) => new URL(page).pathname.startsWith(path)),
    }),
    pagePolicy(),
    offline(),
    headersFile(),
  ],
  vite: {
    resolve: {
      alias: {
        'backhalf/tables': here('../packages/core/src/tables.ts'),
        backhalf: here('../packages/core/src/index.ts'),
        '~': here('./src'),
      },
    },
  },
});

import { expect, test } from 'vitest';
import { builtPages, htmlOf } from './site-map.js';

// Places outside that a page may lead to; a link to anywhere else is a mistake.
const OUTSIDE = [/^https:\/\/backhalf\.example\//, /^https:\/\/doi\.org\//, /^mailto:/];

const pages = builtPages();
const attributes = (html: string, name: string): readonly string[] =>
  [...html.matchAll(new RegExp(`\\s${name}="([^"]*)"`, 'g'))].map(([, value = '']) =>
    unescaped(value),
  );
const unescaped = (text: string): string =>
  text
    .replace(/&#(\d+);/g, (_, n) => String.fromCodePoint(Number(n)))
    .replaceAll('&amp;', '&')
    .replaceAll('&quot;', '"');

const anchors = new Map(pages.map((path) => [path, new Set(attributes(htmlOf(path), 'id'))]));

test.each(pages)('%s: every link and anchor resolves', (path) => {
  const html = htmlOf(path).replace(/<(script|style)\b.*?<\/\1>/gs, '');
  const broken = [...html.matchAll(/<a\s[^>]*?href="([^"]*)"/g)]
    .map(([, href = '']) => unescaped(href))
    .filter((href) => !OUTSIDE.some((allowed) => allowed.test(href)))
    .filter((href) => {
      const url = new URL(href, `http://site${path}`);
      if (url.origin !== 'http://site') return true;
      const known = anchors.get(decodeURI(url.pathname));
      if (known === undefined) return !/\.(json|svg|csv|txt|xml|webmanifest)$/.test(url.pathname);
      const id = decodeURIComponent(url.hash.slice(1));
      return id !== '' && id !== '_top' && !known.has(id);
    });
  expect(broken).toEqual([]);
});

test.each(pages)('%s: each id stands once', (path) => {
  const html = htmlOf(path).replace(/<(script|style|svg)\b.*?<\/\1>/gs, '');
  const ids = attributes(html, 'id');
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
});

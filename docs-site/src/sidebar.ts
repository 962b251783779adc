import { defineRouteMiddleware } from '@astrojs/starlight/route-data';

/**
 * The list of every name, some hundred links, stands beside the reference only. On all other pages it
 * would be more than half of the page, which a phone at the pool has to carry.
 */
export const onRequest = defineRouteMiddleware(({ locals: { starlightRoute } }) => {
  if (starlightRoute.id.startsWith('api')) return;
  starlightRoute.sidebar = withoutNames(starlightRoute.sidebar);
});

type Sidebar = App.Locals['starlightRoute']['sidebar'];

/** Two levels: sections, and pages in them. */
const withoutNames = (sidebar: Sidebar): Sidebar =>
  sidebar.map((section) =>
    section.type === 'link' ? section : { ...section, entries: section.entries.map(reference) },
  );

const reference = (entry: Sidebar[number]): Sidebar[number] =>
  entry.type === 'link'
    ? entry
    : { ...entry, entries: entry.entries.filter(({ type }) => type === 'link') };

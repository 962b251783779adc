/** The parts of the site, by what a reader is doing; `under` is what lies in that part. */
export const sections = [
  { label: 'Calculators', href: '/calculators/', under: '/calculators/' },
  { label: 'Learn', href: '/learn/', under: '/learn/' },
  { label: 'Explain', href: '/explain/', under: '/explain/' },
  { label: 'Library', href: '/library/', under: '/library/' },
];

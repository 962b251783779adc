import { markLaps } from '~/brand/swim';
import { waterLine } from '~/brand/water-line';

export function GET(): Response {
  const { front, back } = waterLine(markLaps, 26, 12);
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" rx="7" fill="#06222c"/><g transform="translate(3 10)" fill="none" stroke-width="3" stroke-linecap="round"><path d="${front}" stroke="#8fc3d2"/><path d="${back}" stroke="#ff9a52" stroke-width="4"/></g></svg>`;
  return new Response(svg, { headers: { 'Content-Type': 'image/svg+xml' } });
}

export function GET(): Response {
  const manifest = {
    name: 'backhalf: swim pacing',
    short_name: 'backhalf',
    start_url: '/calculators/',
    display: 'standalone',
    background_color: '#fdfefe',
    theme_color: '#06222c',
    icons: [{ src: '/favicon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
  };
  return new Response(JSON.stringify(manifest), {
    headers: { 'Content-Type': 'application/manifest+json' },
  });
}

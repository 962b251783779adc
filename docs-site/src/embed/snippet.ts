/** What a page needs to hold a calculator: a frame, and a few lines that give it its height. */
export function snippetOf(site: string, job: string, title: string, theme: string): string {
  const query = theme === 'auto' ? '' : `?theme=${theme}`;
  return `<iframe src="${site}/embed/${job}/${query}" title="${title}" width="100%" height="900" style="border:0" loading="lazy"></iframe>
<script>
  addEventListener('message', ({ data, source }) => {
    if (data?.type !== 'backhalf:height') return;
    for (const frame of document.querySelectorAll('iframe')) {
      if (frame.contentWindow === source) frame.height = data.height;
    }
  });
</script>`;
}

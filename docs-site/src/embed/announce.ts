// An embedded calculator takes its theme from its address, and tells the page around it how tall it is.

const theme = new URLSearchParams(location.search).get('theme');
if (theme === 'light' || theme === 'dark') document.documentElement.dataset['theme'] = theme;

if (window.parent !== window) {
  const tell = () => {
    const height = Math.ceil(document.body.getBoundingClientRect().height);
    // Any page may hold it, and the height is no secret.
    window.parent.postMessage({ type: 'backhalf:height', height }, '*');
  };
  new ResizeObserver(tell).observe(document.body);
}

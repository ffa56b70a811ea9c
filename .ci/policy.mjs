/** The content security policy: the same in development, in the journeys and in production. */
const DIRECTIVES = {
  'default-src': "'none'",
  'script-src': "'self'",
  'worker-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' blob: data:",
  'font-src': "'self'",
  'manifest-src': "'self'",
  'connect-src': "'none'",
  'form-action': "'none'",
  'base-uri': "'none'",
  'trusted-types': 'lit-html tt-worker tt-clip tt-drawing tt-offline',
  'require-trusted-types-for': "'script'",
};

export function policy(changes = {}) {
  return Object.entries({ ...DIRECTIVES, ...changes }).map(([name, value]) => `${name} ${value}`).join('; ');
}

const ALWAYS = { 'X-Content-Type-Options': 'nosniff', 'Referrer-Policy': 'no-referrer' };

/**
 * Headers of each file of the built folder. The policy also stands in the page
 * itself; as headers it holds for workers too. The service worker alone may
 * fetch, and only the app's own files.
 */
export function headersOf(name) {
  const always = { ...ALWAYS, 'Cache-Control': /-[\w-]{8}\.(js(\.map)?|css|woff2)$/.test(name) ? 'public, max-age=31536000, immutable' : 'no-cache' };
  if (name === 'service-worker.js') return { ...always, 'Content-Security-Policy': "default-src 'none'; script-src 'self'; connect-src 'self'" };
  return /\.(html|js)$/.test(name) ? { ...always, 'Content-Security-Policy': policy({ 'frame-ancestors': "'self'" }) } : always;
}

/** All of them as the text of a `_headers` file, which many web hosts read. */
export function headersFile(names) {
  const block = (path, headers) => [path, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`)].join('\n');
  return `${[block('/', headersOf('index.html')), ...names.map((name) => block(`/${name}`, headersOf(name)))].join('\n\n')}\n`;
}

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
  'trusted-types': 'lit-html tt-worker tt-clip',
  'require-trusted-types-for': "'script'",
};

export function policy(changes = {}) {
  return Object.entries({ ...DIRECTIVES, ...changes }).map(([name, value]) => `${name} ${value}`).join('; ');
}

/**
 * Serves the built folder as a web host would, with the headers that its
 * `_headers` file asks for: `npm run serve [-- --port=8080 --under=/some/path/]`.
 */
import { createServer } from 'node:http';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import sirv from 'sirv';
import { headersOf } from './policy.mjs';

/** @param under path of the folder on the host, with a `/` at both ends */
export async function serve(folder, { port = 0, under = '/' } = {}) {
  const files = sirv(folder, {
    dev: true, dotfiles: false,
    setHeaders: (response, path) => {
      for (const [name, value] of Object.entries(headersOf(path.endsWith('/') ? 'index.html' : path.slice(path.lastIndexOf('/') + 1)))) response.setHeader(name, value);
    },
  });
  const server = createServer((request, response) => {
    const missing = () => response.writeHead(404, { 'Content-Type': 'text/plain' }).end('There is nothing here.');
    if (!request.url.startsWith(under)) {
      missing();
      return;
    }
    request.url = request.url.slice(under.length - 1);
    files(request, response, missing);
  });
  await new Promise((ready, failed) => {
    server.once('error', failed);
    server.listen(port, 'localhost', ready);
  });
  return {
    address: `http://localhost:${server.address().port}${under}`,
    stop: () => new Promise((done) => { server.close(done); server.closeAllConnections(); }),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values: { port, under } } = parseArgs({ options: { port: { type: 'string', default: '8080' }, under: { type: 'string', default: '/' } } });
  const folder = fileURLToPath(new URL('../dist/', import.meta.url));
  if (!existsSync(`${folder}index.html`)) {
    console.error('There is nothing to serve yet: run npm run build first.');
    process.exit(1);
  }
  const { address } = await serve(folder, { port: Number(port), under: `/${under}/`.replace(/\/+/g, '/') });
  console.log(`The built app is at ${address}`);
}

/** The built app on a port of its own, from memory: what a web host would give, and nothing else. */
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, readdir, rm } from 'node:fs/promises';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const TYPES = { '.html': 'text/html; charset=utf-8', '.js': 'text/javascript', '.svg': 'image/svg+xml' };
const build = fileURLToPath(new URL('../../.ci/build.mjs', import.meta.url));

export async function serveBuilt() {
  const folder = await mkdtemp(join(tmpdir(), 'tape-and-tally-built-'));
  const files = new Map();
  try {
    await promisify(execFile)(process.execPath, [build, folder]);
    for (const name of await readdir(folder)) {
      if (extname(name) in TYPES) files.set(`/${name}`, await readFile(join(folder, name)));
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
  const server = createServer(({ url }, response) => {
    const path = new URL(url ?? '/', 'http://localhost').pathname;
    const name = path === '/' ? '/index.html' : path;
    const body = files.get(name);
    response.writeHead(body ? 200 : 404, body ? { 'content-type': TYPES[extname(name)], 'cache-control': 'no-cache' } : {});
    response.end(body);
  });
  await new Promise((ready) => { server.listen(0, '127.0.0.1', ready); });
  const address = `http://localhost:${server.address().port}/`;
  return {
    address,
    /** One of the page's own scripts, which it may fetch when they are first needed. */
    isCode: (url) => url.startsWith(address) && url.endsWith('.js') && files.has(new URL(url).pathname),
    stop: () => new Promise((done) => { server.close(done); server.closeAllConnections(); }),
  };
}

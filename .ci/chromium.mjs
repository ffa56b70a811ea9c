/**
 * Finds a Chromium to test with; installs one when there is none:
 * Debian's package where apt is there, else the test runner's own downloader.
 */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const PLACES = [
  process.env.CHROME_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

export function findChromium() {
  return PLACES.find((place) => place && existsSync(place));
}

/** Switches every headless run needs: as root there is no sandbox, and nothing may reach for the network. */
export const CHROMIUM_ARGS = [
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
  '--disable-component-update', '--disable-sync', '--disable-dev-shm-usage',
];

export async function ensureChromium() {
  const found = findChromium();
  if (found) return found;
  const run = (command, ...args) => execFileSync(command, args, { stdio: 'inherit' });
  if (existsSync('/usr/bin/apt-get')) {
    const sudo = process.getuid?.() === 0 ? [] : ['sudo'];
    console.log('No Chromium here: installing Debian’s package.');
    run(...sudo, 'apt-get', 'update', '-qq');
    run(...sudo, 'apt-get', 'install', '-y', '-qq', 'chromium', 'fonts-dejavu-core');
    return findChromium();
  }
  console.log('No Chromium here: asking the test runner’s browser downloader for one.');
  const { install, Browser, resolveBuildId, detectBrowserPlatform } = await import('@puppeteer/browsers');
  const buildId = await resolveBuildId(Browser.CHROME, detectBrowserPlatform(), 'stable');
  const { executablePath } = await install({ browser: Browser.CHROME, buildId, cacheDir: 'node_modules/.cache/chromium' });
  return executablePath;
}

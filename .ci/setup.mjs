/**
 * Brings a checkout to the point where it can run: installs the packages that
 * the lock file names when they are missing or older than it, and with
 * `--browser` a Chromium. Uses nothing but Node, because it runs before anything is installed.
 */
import { execSync } from 'node:child_process';
import { statSync } from 'node:fs';

const changed = (file) => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;

// npm writes its own copy of the lock file last, so its age is the age of the installation.
if (changed('node_modules/.package-lock.json') < changed('package-lock.json')) {
  console.log('Installing packages (once, and again when the lock file has changed).');
  execSync('npm ci --include=dev --no-audit --no-fund', { stdio: 'inherit' });
}

if (process.argv.includes('--browser')) {
  const { ensureChromium } = await import('./chromium.mjs');
  const browser = await ensureChromium();
  if (!browser) {
    console.error('No Chromium was found and none could be installed. Install one, or set CHROME_PATH to it.');
    process.exit(1);
  }
  console.log(`Chromium: ${browser}`);
}

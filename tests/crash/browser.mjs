/** A browser in a process group of its own, so that all of it can be killed at once, as when a machine fails. */
import { spawn } from 'node:child_process';
import { chromium } from 'playwright-core';
import { CHROMIUM_ARGS, findChromium } from '../../.ci/chromium.mjs';

const PATIENCE = 60_000;

/** @param profile the folder in which it keeps everything, and finds it again */
export async function startBrowser(profile) {
  const child = spawn(findChromium(), [
    ...CHROMIUM_ARGS, '--headless=new', '--remote-debugging-port=0', `--user-data-dir=${profile}`, '--no-default-browser-check',
    '--disable-extensions', '--disable-crash-reporter', '--window-size=1300,900', 'about:blank',
  ], { detached: true, stdio: ['ignore', 'ignore', 'pipe'] });
  const ended = new Promise((resolve) => { child.once('exit', resolve); });
  const kill = async () => {
    try {
      process.kill(-child.pid, 'SIGKILL');
    } catch (error) {
      if (error.code !== 'ESRCH') throw error;
    }
    await ended;
  };
  try {
    const connection = await chromium.connectOverCDP(await listening(child), { timeout: PATIENCE });
    return { context: connection.contexts()[0], kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

function listening(child) {
  return new Promise((resolve, reject) => {
    let said = '';
    const late = setTimeout(() => reject(new Error(`The browser does not start.\n${said}`)), PATIENCE);
    child.stderr.on('data', (part) => {
      said += part;
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (!address) return;
      clearTimeout(late);
      resolve(address);
    });
    child.once('exit', () => {
      clearTimeout(late);
      reject(new Error(`The browser ended at once.\n${said}`));
    });
  });
}

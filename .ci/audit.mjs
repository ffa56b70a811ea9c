/**
 * Asks the registry for known faults of the packages in the lock file. The
 * advisories are kept by the registry alone: no package on it carries them, and
 * `npm audit --offline` finds none because it looks at none. So a registry that
 * does not answer leaves this unchecked, which is said and is no failure;
 * an advisory is one.
 */
import { spawnSync } from 'node:child_process';

const { stdout, stderr } = spawnSync('npm', ['audit', '--json'], { encoding: 'utf8', timeout: 120_000 });

function read(text) {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

const report = read(stdout);
if (report?.auditReportVersion === undefined) {
  const why = report?.error?.summary || report?.message || stderr.split('\n').find((line) => line.includes('npm')) || 'no answer in two minutes';
  console.log(`Not checked for known faults: the registry does not answer npm audit (${why.trim()}). Versions are fixed by package-lock.json; run node .ci/audit.mjs where the registry answers.`);
} else {
  const found = Object.values(report.vulnerabilities ?? {});
  for (const { name, severity, range, via } of found) console.log(`${severity}: ${name} ${range}: ${via.map((each) => (typeof each === 'string' ? each : each.title)).join('; ')}`);
  console.log(found.length === 0 ? 'No known faults in any package of the lock file.' : `${found.length} packages with known faults: bring them up to date, or say in DEVELOPERS.md why they may stay.`);
  process.exitCode = found.length === 0 ? 0 : 1;
}

/** Which folder may import which, as DEVELOPERS.md has it. Checked by dependency-cruiser in `npm run lint`. */
const may = {
  'src/quantities': [],
  'src/sewing': ['src/quantities'],
  'src/formula': ['src/quantities'],
  'src/workbook': ['src/quantities', 'src/formula'],
  'src/tables': ['src/quantities', 'src/workbook'],
  'src/keeping': ['src/workbook'],
  'src/reckoning': ['src/quantities', 'src/workbook', 'src/formula'],
  'src/pictures': ['src/quantities', 'src/sewing'],
  'src/people': ['src/quantities', 'src/formula', 'src/workbook'],
  'src/lay': ['src/quantities'],
  'src/solving': [],
  'src/look': [],
  'src/grid': ['src/workbook', 'src/formula', 'src/quantities', 'src/look', 'src/reckoning'],
  'src/panels': ['src/pictures', 'src/look', 'src/quantities', 'src/workbook', 'src/tables', 'src/reckoning', 'src/people'],
  'workers/reckon': ['src/sewing', 'src/formula', 'src/quantities', 'src/workbook', 'src/reckoning', 'src/solving', 'src/lay'],
  'workers/lay': ['src/lay', 'src/quantities'],
  'workers/offline': ['src/app'],
  'sheets': ['src/workbook'],
};
const every = ['src', 'workers', 'sheets', 'tests'];
const named = (folder) => `^${folder}/`;

module.exports = {
  forbidden: [
    ...Object.entries(may).map(([folder, others]) => ({
      name: `${folder} imports only ${others.length ? others.join(', ') : 'itself'}`,
      severity: 'error',
      from: { path: named(folder) },
      to: { path: every.map(named), pathNot: [folder, ...others].map(named) },
    })),
    { name: 'no circles', severity: 'error', from: {}, to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } } },
    { name: 'nothing imports the tests', severity: 'error', from: { pathNot: '^tests/' }, to: { path: '^tests/' } },
    { name: 'the engine library stays in its worker', severity: 'error', from: { path: '^src/' }, to: { path: 'node_modules/hyperformula' } },
    { name: 'the page never computes', severity: 'error', from: { path: '^src/(grid|panels|app|tables|keeping|workbook|reckoning)/' }, to: { path: '^workers/', pathNot: 'worker\\.ts$' } },
    { name: 'everything resolves', severity: 'error', from: {}, to: { couldNotResolve: true, pathNot: '\\.mjs$' } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'browser', 'default', 'types'], extensions: ['.ts', '.mjs', '.js', '.json'] },
  },
};

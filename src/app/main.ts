/** Start: the look, the workbook that was kept (or the demo garment), the page; then the engine. */
import { tokens } from '../look/index.ts';
import { Database, Keeper, KeepingTrouble, ResultStore, Shelf, TemplateStore, askToPersist, claim, newBookId } from '../keeping/index.ts';
import { Supervisor, startReckonWorker } from '../reckoning/index.ts';
import { addressOf, bookAtAddress, goTo, warnBeforeLeaving } from './address.ts';
import { Desk } from './desk.ts';
import { takeDroppedFiles } from './dropped-files.ts';
import { comeBack, rememberPlace } from './last-place.ts';
import { keepLastResults, showLastResults } from './last-results.ts';
import { NewVersion } from './new-version.ts';
import { App } from './shell.ts';
import { fetchMorePanels } from './more-panels.ts';
import { fetchLater } from './summon.ts';
import { restoreTheme } from './theme.ts';

document.adoptedStyleSheets.push(tokens.styleSheet!);
restoreTheme();

const database = new Database();
const keeper = new Keeper(database);
const shelf = new Shelf(database);
const results = new ResultStore(database);
const { desk, problems, from } = await openDesk();

if (from === 'kept') comeBack(desk);
rememberPlace(desk);

const app = new App();
app.desk = desk;
document.querySelector('main[aria-busy]')?.remove();
document.body.append(app);

const engine = new Supervisor({ start: startReckonWorker, book: () => desk.book });
desk.attach(engine, keeper);
engine.open();
if (from === 'kept') await showLastResults(desk, keeper, results);
keepLastResults(desk, keeper, results);

if (from === 'nothing') {
  // Typing into a stand-in would only hide the workbook that could not be read.
  desk.setReading('the workbook kept here cannot be read just now');
} else {
  // From now on this tab stays with this workbook, whichever another tab uses last.
  addressOf(desk.book.id);
  const { mode } = await claim(desk.book.id, () => void takeOver());
  if (mode === 'reading') desk.setReading('open in another tab', 'This tab is only reading, because the workbook is open in another tab; change it there, or close that tab and this one goes on.');
  else if (from === 'demo') void keeper.begin(desk.book);
  else void keeper.steps().then((steps) => desk.remember(steps));
  void shelf.opened(desk.book.id).then(() => shelf.emptyBin()).catch(() => undefined);
  void keeper.aside().then((aside) => desk.setAsideCount(aside.length), () => undefined);
}
if (from === 'nothing') desk.say(problems.join(' '));
else if (problems.length) desk.say(`${problems[0]} “Look at it” shows all that was set aside.`);

// The browser asks its own question for this, so not before she has typed something worth keeping.
desk.addEventListener('change', function asked() {
  if (desk.history.done.length === 0) return;
  desk.removeEventListener('change', asked);
  void askToPersist().then((protection) => { app.keep.protection = protection; });
});
warnBeforeLeaving(keeper);
app.keep.use({ keeper, shelf, go: goTo });
takeDroppedFiles(window, app.keep, desk);

// A storage that fails says so where something is kept in it.
void app.useTemplates(new TemplateStore(database)).catch(() => undefined);
app.learn(await engine.catalogue());
// The start is over: what was not needed for it comes now, before it is asked for.
await fetchLater();
await fetchMorePanels();
const version = new NewVersion(keeper);
app.offer(version);
await version.begin();

async function openDesk(): Promise<{ desk: Desk; problems: readonly string[]; from: 'kept' | 'demo' | 'nothing' }> {
  try {
    const wanted = bookAtAddress();
    // What the address names may have been thrown away since.
    const here = wanted !== null && (await shelf.list()).some(({ id, binnedAt }) => id === wanted && binnedAt === null);
    const loaded = await keeper.load(here ? wanted : undefined);
    return loaded
      ? { desk: new Desk(loaded.book), problems: loaded.problems, from: 'kept' }
      : { desk: await demoDesk(), problems: [], from: 'demo' };
  } catch (error) {
    // Where nothing can be kept at all, nothing is hidden by typing; the page says that it is not kept.
    if (error instanceof KeepingTrouble && error.why === 'unavailable') return { desk: await demoDesk(), problems: [], from: 'demo' };
    return { desk: await demoDesk(), problems: [`${error instanceof Error ? error.message : String(error)} This is the demo garment. Load the page again to try once more.`], from: 'nothing' };
  }
}

/** Only who comes for the first time waits for it to be fetched. */
async function demoDesk(): Promise<Desk> {
  const { demoBook, demoOpens } = await import('./demo.ts');
  const desk = new Desk(demoBook(newBookId()));
  desk.selectArea(demoOpens(desk.book));
  return desk;
}

/** The other tab has let go: what it kept is the workbook now. */
async function takeOver(): Promise<void> {
  try {
    const loaded = await keeper.load(desk.book.id);
    if (loaded) desk.replace(loaded.book);
    desk.remember(await keeper.steps());
    desk.setAsideCount((await keeper.aside()).length);
    desk.setReading(null);
    desk.say('The other tab was closed; this one goes on with the workbook.');
  } catch (error) {
    desk.setReading('the other tab was closed, but what it kept cannot be read just now; load the page again');
    desk.say(error instanceof Error ? error.message : String(error));
  }
}

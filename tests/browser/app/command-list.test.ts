import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../src/app/command-list.ts';
import type { CommandList } from '../../../src/app/command-list.ts';
import { COMMANDS } from '../../../src/app/commands.ts';
import { demoBook } from '../../../src/app/demo.ts';
import { Desk } from '../../../src/app/desk.ts';
import { accessible, find, heard, press, texts, words } from '../panels/support.ts';

async function list(): Promise<{ made: CommandList; desk: Desk }> {
  const made = await fixture<CommandList>(html`<tt-command-list></tt-command-list>`);
  const desk = new Desk(demoBook('list'));
  made.open(desk);
  await made.updateComplete;
  return { made, desk };
}
const options = (made: CommandList): string[] => texts(made, '[role=option] span');
const chosen = (made: CommandList): string => words(find(made, '[role=option][aria-selected=true] span').textContent);

describe('the list of commands', () => {
  it('has every command that makes sense now, under its heading, with its keys', async () => {
    const { made, desk } = await list();
    expect(options(made)).to.have.members(COMMANDS.filter(({ when }) => when?.(desk) ?? true).map(({ label }) => label));
    expect(options(made), 'nothing to take back yet').not.to.include('Undo');
    expect(texts(made, '[role=group] h3')).to.deep.equal(['Workbook', 'Sheet', 'Cells', 'Show', 'Help']);
    expect(texts(made, '#c-commands > *')).to.deep.equal(['All commands', 'Ctrl + .']);
    await accessible(made);
  });

  it('offers undo once there is something to take back', async () => {
    const { made, desk } = await list();
    await press('Escape');
    desk.do({ do: 'setTitle', title: 'Other', person: '' });
    made.open(desk);
    await made.updateComplete;
    expect(options(made)[0]).to.equal('Undo');
  });

  it('finds by words in any order, and says when none fits', async () => {
    const { made } = await list();
    await sendKeys({ type: 'CSV save' });
    expect(options(made)).to.deep.equal(['Save this sheet as CSV…', 'Save the selected cells as CSV…']);
    expect(chosen(made)).to.equal('Save this sheet as CSV…');
    await sendKeys({ type: ' zipper' });
    expect(options(made)).to.deep.equal([]);
    expect(words(find(made, '[role=status]').textContent)).to.contain('No command has these words.');
    const run = heard(made, 'tt-run');
    await press('Enter');
    expect(run).to.deep.equal([]);
    await accessible(made);
  });

  it('runs the one that the arrow keys chose, and names it to a screen reader', async () => {
    const { made } = await list();
    const run = heard<{ id: string }>(made, 'tt-run');
    await sendKeys({ type: 'inches to' });
    await press('ArrowDown', 'ArrowDown');
    expect(chosen(made)).to.equal('Show inches to 1/32');
    const field = find(made, 'input');
    expect(find(made, `#${field.getAttribute('aria-activedescendant')}`).textContent).to.contain('Show inches to 1/32');
    await press('ArrowDown');
    expect(chosen(made), 'round to the first').to.equal('Show inches to 1/8');
    await press('ArrowUp', 'Enter');
    expect(run).to.deep.equal([{ id: 'inches-32' }]);
    expect(find<HTMLDialogElement>(made, 'dialog').open).to.equal(false);
  });

  it('keeps the chosen one in view, and starts anew each time', async () => {
    const { made, desk } = await list();
    await press(...Array.from({ length: 24 }, () => 'ArrowDown'));
    const box = find(made, '[aria-selected=true]').getBoundingClientRect();
    expect(box.top).to.be.at.least(0);
    expect(box.bottom).to.be.at.most(innerHeight);
    await sendKeys({ type: 'dark' });
    await press('Escape');
    made.open(desk);
    await made.updateComplete;
    expect([find<HTMLInputElement>(made, 'input').value, find(made, '[role=option]').getAttribute('aria-selected')]).to.deep.equal(['', 'true']);
  });

  it('runs one that is clicked', async () => {
    const { made } = await list();
    const run = heard<{ id: string }>(made, 'tt-run');
    find(made, '#c-theme-dark').click();
    expect(run).to.deep.equal([{ id: 'theme-dark' }]);
  });
});

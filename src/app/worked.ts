/** "Keep what worked": from the open workbook into the record of its person. */
import { html } from 'lit';
import { cellName } from '../formula/index.ts';
import { newBookId } from '../keeping/index.ts';
import { shownResult, type WorkedAsked, type WorkedBegin } from '../panels/index.ts';
import { NOBODY, workedFrom } from '../people/index.ts';
import { cellAt, recordsOf, recordCalled } from '../workbook/index.ts';
import { today } from './days.ts';
import type { Desk } from './desk.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { showAsFor } from './sheet-view.ts';

export function panel(host: PanelHost): MorePanel {
  let sentence = '';
  let begin: WorkedBegin | undefined;
  return {
    opened() {
      sentence = '';
      begin = beginWith(host.desk);
    },
    render() {
      const { desk } = host;
      const { row, col } = desk.selection.focus;
      return html`<tt-worked-form .people=${recordsOf(desk.book, 'person').map(({ id, data: { name } }) => ({ id, name }))} .whom=${desk.book.person} .begin=${begin}
        .place=${`${desk.sheet.name} ${cellName(row, col)}`} .shown=${shownAt(desk, desk.sheetId, row, col)} .sentence=${sentence}
        @tt-keep-worked=${({ detail }: CustomEvent<WorkedAsked>) => {
          if (keepWorked(desk, detail)) host.close();
          else sentence = desk.said;
          host.draw();
        }}></tt-worked-form>`;
    },
  };
}

function keepWorked(desk: Desk, { person, name, worked }: WorkedAsked): boolean {
  const id = person || newBookId();
  const data = recordCalled(desk.book, 'person', id) ?? { ...NOBODY, name };
  const done = desk.do({
    do: 'many', label: `keep what worked for ${data.name}`,
    edits: [{ do: 'setRecord', kind: 'person', id, data: { ...data, worked: [...data.worked, { ...worked, id: newBookId() }] } }],
  });
  if (done) desk.say(`Kept what worked for ${data.name}. It is offered when you start her next garment.`);
  return done;
}

/** What a cell shows in its own unit, if it is something that can be kept: not an error, not nothing. */
function shownAt(desk: Desk, sheet: number, row: number, col: number): string {
  const page = desk.book.sheets.find(({ id }) => id === sheet);
  const result = desk.results.at(sheet, row, col);
  if (result.kind === 'error' || !page) return '';
  const { main } = shownResult(result, { ...showAsFor(cellAt(page, row, col), desk.showAs), plain: true });
  return main.slice(0, 200);
}

const beginWith = (desk: Desk): WorkedBegin => ({
  garment: desk.book.title, day: today(),
  ...workedFrom(desk.book, (sheet, row, col) => shownAt(desk, sheet.id, row, col)),
});

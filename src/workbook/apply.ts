/**
 * The only way to change a workbook.
 *
 * `apply` is pure: the workbook given is never touched, and what an edit leaves
 * alone is the same object afterwards. Every edit either applies or throws
 * `EditRefused` with one sentence. Its inverse restores the workbook exactly,
 * spelling of formulas and all; an edit that changes nothing gives back the
 * same workbook object.
 */
import { acknowledge } from './acknowledge.ts';
import { keptLays, laysChanged } from './kept-lays.ts';
import { checkLine } from './limits.ts';
import { moveCells } from './move.ts';
import { moveLines } from './move-lines.ts';
import { renameName, setName } from './names.ts';
import { orderRows } from './order-rows.ts';
import { joined, setCells, unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { addSheet, moveSheet, removeSheet, renameSheet, setAbout, setWidth } from './sheets.ts';
import { recordsFollow, setRecord } from './set-record.ts';
import { setFilter, setFrozen, setHidden } from './showing.ts';
import { changeStructure } from './structure.ts';
import type { Applied, Book, Edit, Effect } from './types.ts';

function setSettings({ settings: { show, inchStep, decimalMark } }: Extract<Edit, { do: 'setSettings' }>, book: Book): Outcome {
  const old = book.settings;
  if (old.show === show && old.inchStep === inchStep && old.decimalMark === decimalMark) return unchanged(book);
  return { book: { ...book, settings: { show, inchStep, ...(decimalMark && { decimalMark }) } }, undo: [{ do: 'setSettings', settings: old }], effects: [] };
}

function setTitle({ title, person }: Extract<Edit, { do: 'setTitle' }>, book: Book): Outcome {
  if (book.title === title && book.person === person) return unchanged(book);
  checkLine(title, 'The title');
  checkLine(person, "The person's name");
  return {
    book: { ...book, title, person },
    undo: [{ do: 'setTitle', title: book.title, person: book.person }],
    effects: [],
  };
}

/** All or nothing: when one is refused, none is done. */
function applyMany({ edits }: Extract<Edit, { do: 'many' }>, book: Book): Outcome {
  const steps: Outcome[] = [];
  let after = book;
  for (const edit of edits) {
    const step = outcomeOf(edit, after);
    after = step.book;
    steps.push(step);
  }
  return {
    book: after,
    undo: steps.toReversed().flatMap((step) => step.undo),
    effects: steps.flatMap((step) => step.effects),
  };
}

function outcomeOf(edit: Edit, book: Book): Outcome {
  return recordsFollow(edit, book, ownOutcomeOf(edit, book), ownOutcomeOf);
}

function ownOutcomeOf(edit: Edit, book: Book): Outcome {
  switch (edit.do) {
    case 'setCells': return setCells(book, edit.sheet, edit.cells);
    case 'insertRows':
    case 'removeRows':
    case 'insertColumns':
    case 'removeColumns': return changeStructure(edit, book);
    case 'moveRows':
    case 'moveColumns': return moveLines(edit, book);
    case 'orderRows': return orderRows(edit, book);
    case 'acknowledge': return acknowledge(edit, book);
    case 'moveCells': return moveCells(edit, book);
    case 'addSheet': return addSheet(edit, book);
    case 'removeSheet': return removeSheet(edit, book);
    case 'renameSheet': return renameSheet(edit, book);
    case 'moveSheet': return moveSheet(edit, book);
    case 'setAbout': return setAbout(edit, book);
    case 'setName': return setName(edit, book);
    case 'renameName': return renameName(edit, book);
    case 'setWidth': return setWidth(edit, book);
    case 'setHidden': return setHidden(edit, book);
    case 'setFrozen': return setFrozen(edit, book);
    case 'setFilter': return setFilter(edit, book);
    case 'setSettings': return setSettings(edit, book);
    case 'setTitle': return setTitle(edit, book);
    case 'setRecord': return setRecord(edit, book);
    case 'many': return applyMany(edit, book);
    // Not in this version's types, but a journal may have been written by a later one.
    default: throw new EditRefused('This version of the workbook does not know that kind of change.');
  }
}

/** Throws `EditRefused`. */
export function apply(edit: Edit, book: Book): Applied {
  const { book: after, undo, effects } = outcomeOf(edit, book);
  const told: readonly Effect[] = laysChanged(book, after) ? [...effects, { do: 'layouts', kept: keptLays(after) }] : effects;
  return { book: after, inverse: joined(undo, edit.do === 'many' ? edit.label : ''), effects: told };
}

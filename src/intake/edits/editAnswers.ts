import { isDeepStrictEqual } from 'node:util';
import { isMap, isNode, isScalar, parseDocument, visit, type Node, type YAMLMap } from 'yaml';
import { problemKinds } from '../../problems/kinds.ts';
import type { Problem } from '../../problems/problem.ts';
import { mostCharacters, readYaml } from '../authored/yamlText.ts';
import { isList, type Answer, type AnswerEdit } from './answerEdit.ts';
import { changedAnswers, withoutBlanks } from './changedAnswers.ts';
import { lineBreakOf, reportParts } from './reportParts.ts';
import { editedIn, spliceFor, type Place, type Splice } from './splice.ts';
import { behindColon, onOneLine } from './writtenAnswer.ts';

/** A text with its edits, or why it could not be edited: a sentence. */
export type EditedText = { readonly text: string } | { readonly refused: string };

/** Edits answers in the text of a `report.md`; its narrative stays as it is. */
export function editReport(text: string, edits: readonly AnswerEdit[]): EditedText {
  const parts = reportParts(text);
  if (parts === null) return { refused: 'The file has no answers between two lines of dashes.' };
  const edited = editAnswers(parts.answers, edits);
  if ('refused' in edited) return edited;
  const answers = /(?:^|[\r\n])$/.test(edited.text) ? edited.text : edited.text + lineBreakOf(text);
  return { text: parts.opening + answers + parts.closing + parts.narrative };
}

/**
 * Edits answers in a YAML text of answers, one after another: comments, order and spelling of all that is not edited
 * stay byte for byte. What comes out is read again: it holds the edits and otherwise the same answers, or is refused.
 */
export function editAnswers(text: string, edits: readonly AnswerEdit[]): EditedText {
  let edited = text;
  for (const edit of edits) {
    const result = editOnce(edited, edit);
    if ('refused' in result) return result;
    edited = result.text;
    // What other edits take out cannot make up for more than that, and each one reads the text anew.
    if (text.length <= mostCharacters && edited.length > 2 * mostCharacters) break;
  }
  const [trouble] = unreadable(edited);
  if (trouble === undefined || unreadable(text).length > 0) return { text: edited };
  const { kind, expected, found, cure } = trouble;
  return {
    refused: `The answers could not be read any more. ${problemKinds[kind].title}: expected ${expected}; found ${found}. ${cure}`,
  };
}

/** Why answers cannot be read at all, as where they are too long, or what was pasted brings blanks that are none. */
function unreadable(answers: string): readonly Problem[] {
  const { tree, problems } = readYaml('', answers);
  return tree === null ? problems : [];
}

function editOnce(text: string, edit: AnswerEdit): EditedText {
  const refused = (why: string): EditedText => ({
    refused: `${edit.path.join('.')} ${why} Change it in the file itself.`,
  });
  const before = readAnswers(text);
  if (before === null)
    return { refused: 'The answers cannot be read as they stand. Mend what is reported first.' };
  const wanted = changedAnswers(before.answers, edit.path, edit.to);
  if (wanted === null) return refused('lies below an answer in words, or in no list.');
  if (isDeepStrictEqual(wanted, before.answers)) return { text };
  const goal = withoutBlanks(wanted);
  for (const { start, end, words } of splicesFor(before.top, edit, wanted, {
    text,
    newline: lineBreakOf(text),
  })) {
    const edited = text.slice(0, start) + words + text.slice(end);
    const read = readAnswers(edited);
    if (read !== null && isDeepStrictEqual(withoutBlanks(read.answers), goal)) return { text: edited };
  }
  return refused('stands in a way that a form cannot change.');
}

/** Ways to make an edit, the smallest first: the answer alone, then the answers around it as long as they have no comments. */
function* splicesFor(top: YAMLMap | null, edit: AnswerEdit, wanted: Answer, place: Place): Generator<Splice> {
  if (top === null) {
    yield firstAnswers(wanted, place);
    return;
  }
  const own = editedIn(top, edit);
  const splice = own === null ? null : spliceFor(own, edit.after, place);
  if (splice !== null) yield splice;
  for (let depth = edit.path.length - 1; depth > 0; depth -= 1) {
    const path = edit.path.slice(0, depth);
    const node: unknown = top.getIn(path, true);
    if (!isNode(node) || hasComments(node)) return;
    const around = editedIn(top, { path, to: answerAt(wanted, path) });
    const whole = around === null ? null : spliceFor(around, undefined, place);
    if (whole !== null) yield whole;
  }
}

function firstAnswers(wanted: Answer, { text, newline }: Place): Splice {
  const open = text === '' || /[\r\n]$/.test(text) ? '' : newline;
  const entries = typeof wanted === 'string' || isList(wanted) ? [] : Object.entries(wanted);
  const lines = entries.map(([key, own]) => `${onOneLine(key)}:${behindColon(own, '', newline)}${newline}`);
  return { start: text.length, end: text.length, words: open + lines.join('') };
}

interface ReadAnswers {
  readonly answers: Answer;
  /** Null where there is no answer. */
  readonly top: YAMLMap | null;
}

/** Every scalar as the text that was typed; null for what is no block of answers. */
function readAnswers(text: string): ReadAnswers | null {
  const document = parseDocument(text, { schema: 'failsafe', uniqueKeys: true, logLevel: 'silent' });
  if (document.errors.length > 0) return null;
  const { contents } = document;
  if (contents === null || (isScalar(contents) && contents.value === '')) return { answers: {}, top: null };
  return isMap(contents) ? { answers: answersIn(document.toJS({ maxAliasCount: 0 })), top: contents } : null;
}

function answersIn(tree: unknown): Answer {
  if (Array.isArray(tree)) return tree.map(answersIn);
  if (typeof tree !== 'object' || tree === null) return typeof tree === 'string' ? tree : '';
  return Object.fromEntries(Object.entries(tree).map(([key, value]) => [key, answersIn(value)]));
}

function answerAt(answers: Answer, path: AnswerEdit['path']): Answer {
  const [step, ...further] = path;
  if (step === undefined || typeof answers === 'string') return answers;
  const inner = isList(answers) ? answers[Number(step)] : answers[String(step)];
  return inner === undefined ? '' : answerAt(inner, further);
}

function hasComments(node: Node): boolean {
  let found = false;
  visit(node, {
    Node: (_, { comment, commentBefore }) => {
      if (isThere(comment) || isThere(commentBefore)) found = true;
      return found ? visit.BREAK : undefined;
    },
  });
  return found;
}

const isThere = (comment: string | null | undefined): boolean => comment !== undefined && comment !== null;

export type PersonalKind = 'e-mail address' | 'phone number' | 'serial number';

/** A stretch of text that may tell who somebody is, or whose a thing is. */
export interface PersonalData {
  readonly kind: PersonalKind;
  readonly text: string;
  /** Place in the text, from 0. */
  readonly at: number;
}

const email = /[\p{L}\d._%+-]+@(?:[\p{L}\d](?:[\p{L}\d-]*[\p{L}\d])?\.)+\p{L}{2,}/gu;

/** What looks like a phone number and is none: days, times, amounts of money, numbers with a unit of the trade. */
const harmless = [
  /(?<!\d)(?:19|20)\d{2}[-/._ ]?(?:0[1-9]|1[0-2])[-/._ ]?(?:0[1-9]|[12]\d|3[01])(?!\d)(?:[T_ ]?\d{2}[:.h]?\d{2}(?:[:.]?\d{2}(?:[.,]\d+)?)?(?:Z|[+-]\d{2}:?\d{2})?(?!\d))?/g,
  /(?<!\d)\d{1,2}[-/.]\d{1,2}[-/.](?:19|20)?\d{2}(?!\d)(?:[ T]\d{1,2}[:.]?\d{2}(?:[:.]\d{2})?(?!\d))?/g,
  /(?<!\d)\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?(?!\d)/g,
  /[+-]\d+[.,]\d+(?![.,\d])/g,
  /(?:[$€£¥]|\b[A-Z]{3})\s?\d[\d., ]*\d/g,
  /(?<![\d+])\d[\d., ]*\d?\s?(?:rpm|yds?|yards?|m|met(?:re|er)s?|mph|km\/h|m\/s|ft|feet|mm|cm|in|g|kg|°|deg(?:rees)?|%|EUR|GBP|USD|[€£])(?![\p{L}\d])/gu,
] as const;

/** Country code in front: +44 1632 960123. */
const international = /(?<![\p{L}\d.,])(?:\+|00 ?(?=[1-9]))[1-9](?:[ ()/.-]{0,2}\d){7,14}(?![\d.,]*\d)/gu;
/** Groups of three, three and four: (555) 010-0199, 555-010-0199. */
const groups = /(?<![\p{L}\d.,/-])(?:\(\d{3}\) ?\d{3}[-. ]\d{4}|\d{3}([-.])\d{3}\1\d{4})(?![\d-])/gu;
/** A leading zero and at least one gap: 01632 960123, 0151/234 56 78. */
const national = /(?<![\p{L}\d.,:/-])\(?0\d{1,4}\)?[ /-]{1,3}\d{2,}(?:[ -]?\d{2,})*(?![\d.,:]*\d)/gu;
/** Anything long enough behind a word that announces it. */
const announced =
  /\b(?:tel(?:ephone)?|phone|mobile|cell ?phone|whatsapp|fax|call (?:me|us|him|her|them)(?: (?:on|at|under))?)\b[^\p{L}\d\n]{0,4}(?:(?:no|nr|number)\b[^\p{L}\d\n]{0,3})?(\+?\d(?:[ ()/.-]{0,2}\d){5,14})(?!\d)/giu;
const serial =
  /(?<![\p{L}\d])(?:serials?(?:[ -]?(?:no|nr|num|number)s?)?|s\/n|ser\.? ?no)(?![\p{L}\d])[^\p{L}\d\n]{0,4}(?:(?:is|was)\s)?([\p{L}\d](?:[\p{L}\d]|[-/.](?=[\p{L}\d])){3,})/giu;

const digitsIn = (text: string): number => text.replace(/\D/g, '').length;

/**
 * E-mail addresses, phone numbers and serial numbers in a text. Meant to be quiet rather than complete: a serial
 * number is known by the word in front of it, a phone number by its country code, its groups, its leading zero or
 * its word. The patterns are ours; nothing is changed.
 */
export function personalDataIn(text: string): readonly PersonalData[] {
  const found: PersonalData[] = [];
  const add = (kind: PersonalKind, part: string, at: number): void => {
    const overlaps = found.some((other) => at < other.at + other.text.length && other.at < at + part.length);
    if (!overlaps) found.push({ kind, text: part, at });
  };
  for (const match of text.matchAll(email)) add('e-mail address', match[0], match.index);
  for (const match of text.matchAll(serial)) {
    const value = match[1] ?? '';
    if (digitsIn(value) >= 3) add('serial number', value, match.index + match[0].length - value.length);
  }
  const rest = masked(text);
  for (const match of rest.matchAll(announced)) {
    const value = match[1] ?? '';
    add('phone number', value, match.index + match[0].length - value.length);
  }
  for (const [pattern, least] of [
    [international, 8],
    [groups, 10],
    [national, 9],
  ] as const) {
    for (const match of rest.matchAll(pattern)) {
      if (digitsIn(match[0]) >= least && digitsIn(match[0]) <= 15) add('phone number', match[0], match.index);
    }
  }
  return found.sort((a, b) => a.at - b.at);
}

/** The text with all that is harmless written over, every character in its place. */
function masked(text: string): string {
  return harmless.reduce(
    (masking, pattern) => masking.replace(pattern, (part) => '_'.repeat(part.length)),
    text,
  );
}

export type PersonalKind = 'e-mail address' | 'phone number' | 'serial number';

/** A stretch of text that may tell who somebody is, or whose a thing is. */
export interface PersonalData {
  readonly kind: PersonalKind;
  readonly text: string;
  /** Place in the text, from 0. */
  readonly at: number;
}

// Every repeat below is bounded: a cell may be a million characters long and hostile.

const email =
  /(?<![\p{L}\d._%+-])[\p{L}\d._%+-]{1,64}@(?:[\p{L}\d](?:[\p{L}\d-]{0,61}[\p{L}\d])?\.){1,8}\p{L}{2,24}/gu;

/** What looks like a phone number and is none: days, times, amounts of money, numbers with a unit of the trade. */
const harmless = [
  /(?<!\d)(?:19|20)\d{2}[-/._ ]?(?:0[1-9]|1[0-2])[-/._ ]?(?:0[1-9]|[12]\d|3[01])(?!\d)(?:[T_ ]?\d{2}[:.h]?\d{2}(?:[:.]?\d{2}(?:[.,]\d+)?)?(?:Z|[+-]\d{2}:?\d{2})?(?!\d))?/g,
  /(?<!\d)\d{1,2}[-/.]\d{1,2}[-/.](?:19|20)?\d{2}(?!\d)(?:[ T]\d{1,2}[:.]?\d{2}(?:[:.]\d{2})?(?!\d))?/g,
  /(?<!\d)\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?(?!\d)/g,
  /[+-]\d+[.,]\d+(?![.,\d])/g,
  /(?:[$€£¥]|\b[A-Z]{3})\s?\d[\d., ]{0,15}\d/g,
  /(?<![\d+])\d[\d., ]{0,15}\s?(?:rpm|yds?|yards?|m|met(?:re|er)s?|mph|km\/h|m\/s|ft|feet|mm|cm|in|g|kg|°|deg(?:rees)?|%|EUR|GBP|USD|[€£])(?![\p{L}\d])/gu,
] as const;

/** Country code in front: +44 1632 960123. */
const international = /(?<![\p{L}\d.,])(?:\+|00 ?(?=[1-9]))[1-9](?:[ ()/.-]{0,2}\d){7,14}(?![.,]?\d)/gu;
/** Groups of three, three and four: (555) 010-0199, 555-010-0199. */
const groups = /(?<![\p{L}\d.,/-])(?:\(\d{3}\) ?\d{3}[-. ]\d{4}|\d{3}(?:-\d{3}-|\.\d{3}\.)\d{4})(?![\d-])/gu;
/** A leading zero and at least one gap: 01632 960123, 0151/234 56 78. */
const national = /(?<![\p{L}\d.,:/-])\(?0\d{1,4}\)?[ /-]{1,3}\d(?:[ -]?\d){4,12}(?![\d.,:]?\d)/gu;
/** Anything long enough behind a word that announces it. */
const announced =
  /\b(?:tel(?:ephone)?|phone|mobile|cell ?phone|whatsapp|fax|call (?:me|us|him|her|them)(?: (?:on|at|under))?)\b[^\p{L}\d\n]{0,4}(?:(?:no|nr|number)\b[^\p{L}\d\n]{0,3})?(\+?\d(?:[ ()/.-]{0,2}\d){5,14})(?!\d)/giu;
const serial =
  /(?<![\p{L}\d])(?:serials?(?:[ -]?(?:no|nr|num|number)s?)?|s\/n|ser\.? ?no)(?![\p{L}\d])[^\p{L}\d\n]{0,4}(?:(?:is|was)\s)?([\p{L}\d](?:[\p{L}\d]|[-/.](?=[\p{L}\d])){3,30})/giu;

const digitsIn = (text: string): number => text.replace(/\D/g, '').length;

/**
 * E-mail addresses, phone numbers and serial numbers in a text. Meant to be quiet rather than complete: a serial
 * number is known by the word in front of it, a phone number by its country code, its groups, its leading zero or
 * its word. The patterns are ours; nothing is changed.
 */
export function personalDataIn(text: string): readonly PersonalData[] {
  const found: PersonalData[] = [];
  let rest = text;
  /** Takes what a pattern finds (its first group where it has a value) and writes over it, so that it counts once. */
  const take = (kind: PersonalKind, pattern: RegExp, [least, most]: readonly [number, number]): void => {
    rest = rest.replace(pattern, (whole: string, ...details: unknown[]) => {
      const [value, at] = details.length > 2 ? [details[0], details[1]] : [whole, details[0]];
      if (typeof value !== 'string' || typeof at !== 'number') return whole;
      const digits = digitsIn(value);
      if (digits < least || digits > most) return whole;
      found.push({ kind, text: value, at: at + whole.length - value.length });
      return overwritten(whole);
    });
  };
  take('e-mail address', email, [0, Infinity]);
  take('serial number', serial, [3, Infinity]);
  for (const pattern of harmless) rest = rest.replace(pattern, overwritten);
  take('phone number', announced, [6, 15]);
  take('phone number', international, [8, 15]);
  take('phone number', groups, [10, 10]);
  take('phone number', national, [9, 15]);
  return found.sort((a, b) => a.at - b.at);
}

const overwritten = (part: string): string => '_'.repeat(part.length);

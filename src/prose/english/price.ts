import type { Contender } from '../../intake/authored/contender.ts';
import { dateInWords } from '../date.ts';
import { listed } from '../words.ts';

/** "£52", "$30.50": with the sign of the currency where it has one of its own. */
export function moneyWords(amount: number, currency: string, locale: string): string {
  try {
    return new Intl.NumberFormat(locale, {
      style: 'currency',
      currency,
      currencyDisplay: 'narrowSymbol',
      minimumFractionDigits: Number.isInteger(amount) ? 0 : 2,
      maximumFractionDigits: 2,
    }).format(amount);
  } catch {
    return `${amount} ${currency}`;
  }
}

/** "Heron £52, Wren £25, on 18 April 2026."; null where no price is recorded. */
export function pricesWords(contenders: readonly Contender[], locale: string): string | null {
  const priced = contenders.flatMap(({ label, short, price }) =>
    price === undefined ? [] : [{ name: short ?? label, ...price }],
  );
  if (priced.length === 0) return null;
  const days = [...new Set(priced.map(({ on }) => on))];
  const [day] = days;
  const parts = priced.map(
    ({ name, amount, currency, on }) =>
      `${name} ${moneyWords(amount, currency, locale)}${days.length > 1 ? ` (${dateInWords(on)})` : ''}`,
  );
  return `${listed(parts)}${days.length === 1 && day !== undefined ? `, on ${dateInWords(day)}` : ''}.`;
}

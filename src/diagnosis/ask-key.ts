import { settingKey } from '../circuit/setting.ts';
import type { Ask } from '../readings/reading.ts';

const keys = new WeakMap<Ask, string>();

/** Equal for asks that are the same act; red and black count, as a tap's sign depends on them. Made once per ask object. */
export function askKey(ask: Ask): string {
  const known = keys.get(ask);
  if (known !== undefined) return known;
  const { setting, ...rest } = ask;
  const names = Object.entries(rest).sort(([x], [y]) => (x < y ? -1 : 1));
  const texts = names.map(
    ([name, value]) => `${name}=${typeof value === 'string' ? value : settingKey(value)}`,
  );
  const key = `${texts.join(';')}#${settingKey(setting)}`;
  keys.set(ask, key);
  return key;
}

import { type ComponentChild, Fragment, isValidElement, type VNode } from 'preact';

/** What a drawing shows, as plain nodes, for tests: no browser, no hooks. */
export interface Shown {
  readonly tag: string;
  readonly props: Readonly<Record<string, unknown>>;
  readonly children: readonly Shown[];
  /** All text inside, in order. */
  readonly text: string;
}

/** Calls components until only elements are left. Serves pure components, which all drawings are. */
export function shown(child: ComponentChild): readonly Shown[] {
  if (Array.isArray(child)) return child.flatMap((one) => shown(one));
  if (!isValidElement(child)) {
    const silent = child === null || child === undefined || typeof child === 'boolean';
    const text = silent ? '' : String(child);
    return text ? [{ tag: '', props: {}, children: [], text }] : [];
  }
  const { type, props } = child as VNode<Record<string, unknown> & { children?: ComponentChild }>;
  if (type === Fragment) return shown(props.children);
  if (typeof type === 'function') return shown((type as (given: unknown) => ComponentChild)(props));
  const children = shown(props.children);
  return [
    { tag: type as string, props, children, text: children.map(({ text }) => text).join(' ') },
  ];
}

/** Every element that passes, outermost first. */
export function findAll(nodes: readonly Shown[], passes: (node: Shown) => boolean): Shown[] {
  return nodes.flatMap((node) => [
    ...(passes(node) ? [node] : []),
    ...findAll(node.children, passes),
  ]);
}

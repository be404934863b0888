import { parseAst } from 'vite';

/** A piece of text in the code that a person would see. */
export interface VisibleText {
  readonly line: number;
  readonly text: string;
}

/** What the parser gives: ESTree with JSX and types, positions in UTF-16. */
interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

/** Attributes of markup that are read out or shown. */
const SPOKEN = new Set(['title', 'aria-label', 'aria-description', 'placeholder', 'alt', 'label']);
/** Attributes whose text is for the machine, however it looks. */
const SILENT =
  /^(class|className|d|viewBox|points|transform|style|id|key|href|for|rel|type|role|name|allow|accept|fill|stroke.*|preserveAspectRatio|pattern|content|sizes|media|xmlns|font.*|data-.*|aria-(hidden|live|labelledby|describedby|controls|current|pressed|expanded))$/;
/** Calls whose text nobody at the bench reads: promises between programmers, and the browser's own names. */
const FOR_PROGRAMMERS =
  /^(Error|RangeError|TypeError|SyntaxError|DOMException|RegExp|Set|querySelector|querySelectorAll|closest|matches|getElementById|addEventListener|removeEventListener|matchMedia|split|setAttribute|createElement|getContext|registerProcessor)$/;

/** Properties that hold names for the machine, or reasons for those who read the code. */
const NAMES = /^(family|reason|name|key|id|site|repair|kind|is)$/;

/** Two words with a space between, or one word with a capital: what sentences, titles and keys look like. */
const looksSpoken = (text: string): boolean =>
  /\p{L}{2,}[,.;:!?)"”’]* [("“‘]*\p{L}/u.test(text) ||
  /\p{L} \p{L}{2,}/u.test(text) ||
  /^\s*["“]?\p{Lu}\p{Ll}{2,}[.!?:…]?\s*$/u.test(text);

const hasWord = (text: string): boolean => /\p{L}{2,}/u.test(text);

/**
 * Text in one source file that looks as if it were shown or said: text and spoken attributes of markup, and literals that read like words.
 * Single words in lower case cannot be told from names in the code; the end-to-end test in a second language finds those.
 * @param file its name says whether it holds markup
 */
export function visibleText(file: string, source: string): readonly VisibleText[] {
  const program = parseAst(source, { lang: file.endsWith('.tsx') ? 'tsx' : 'ts' });
  const found: VisibleText[] = [];
  const add = (node: Node, text: string) =>
    found.push({
      line: source.slice(0, node.start).split('\n').length,
      text: text.replace(/\s+/g, ' ').trim(),
    });
  const walkAll = (nodes: readonly unknown[]): void => {
    for (const node of nodes) if (isNode(node)) walk(node);
  };
  const walk = (node: Node): void => {
    switch (node.type) {
      case 'JSXText':
        if (hasWord(String(node['value']))) add(node, String(node['value']));
        break;
      case 'JSXAttribute':
        walkAttribute(nameOf(node['name']), node['value']);
        break;
      case 'Literal':
        if (typeof node['value'] === 'string' && looksSpoken(node['value']))
          add(node, node['value']);
        break;
      case 'TemplateLiteral': {
        const quasis = node['quasis'] as readonly { readonly value: { readonly cooked: string } }[];
        const text = quasis.map(({ value }) => value.cooked).join('{}');
        if (/\p{L}{2}/u.test(text) && looksSpoken(text.replaceAll('{}', 'it'))) add(node, text);
        walkAll(node['expressions'] as unknown[]);
        break;
      }
      case 'TaggedTemplateExpression':
      case 'TSLiteralType':
      case 'ImportDeclaration':
      case 'ImportExpression':
      case 'ExportAllDeclaration':
        break;
      case 'ExportNamedDeclaration':
        walkAll([node['declaration']]);
        break;
      case 'CallExpression':
      case 'NewExpression':
        if (!isForProgrammers(node['callee'])) walkAll(childrenOf(node));
        break;
      case 'BinaryExpression':
        // What is compared is a name.
        walkAll(
          /^[!=]==?$/.test(String(node['operator']))
            ? childrenOf(node).filter(({ type }) => type !== 'Literal')
            : childrenOf(node),
        );
        break;
      case 'SwitchCase':
        walkAll(node['consequent'] as unknown[]);
        break;
      case 'Property':
        if (node['computed']) walkAll(childrenOf(node));
        else if (!NAMES.test(nameOf(node['key']))) walkAll([node['value']]);
        break;
      case 'MemberExpression':
        walkAll(node['computed'] ? childrenOf(node) : [node['object']]);
        break;
      default:
        walkAll(childrenOf(node));
    }
  };
  function walkAttribute(name: string, value: unknown): void {
    if (!isNode(value)) return;
    if (SILENT.test(name)) return;
    const { value: text } = value;
    if (value.type !== 'Literal' || typeof text !== 'string') walk(value);
    else if (SPOKEN.has(name) ? hasWord(text) : looksSpoken(text)) add(value, text);
  }
  walk(program as unknown as Node);
  return found;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

const childrenOf = (node: Node): readonly Node[] =>
  Object.values(node).flatMap((value) => (Array.isArray(value) ? value : [value]).filter(isNode));

const isForProgrammers = (callee: unknown): boolean =>
  FOR_PROGRAMMERS.test(nameOf(callee)) ||
  (isNode(callee) && callee.type === 'MemberExpression' && nameOf(callee['object']) === 'console');

function nameOf(node: unknown): string {
  if (!isNode(node)) return '';
  if (node.type === 'JSXNamespacedName') return '';
  if (node.type === 'MemberExpression') return nameOf(node['property']);
  return typeof node['name'] === 'string' ? node['name'] : '';
}

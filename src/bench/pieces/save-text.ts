const types = { json: 'application/json', txt: 'text/plain;charset=utf-8' } as const;

/** Gives text to the browser as a file to keep, named by the job's title and day. */
export function saveText(
  text: string,
  of: { readonly title: string; readonly changedAt: string },
  kind: keyof typeof types = 'json',
): void {
  const address = URL.createObjectURL(new Blob([text], { type: types[kind] }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${fileName(of)}.${kind}`;
  link.click();
  // The browser reads the file after the click.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

function fileName({ title, changedAt }: { title: string; changedAt: string }): string {
  const words = title
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .slice(0, 40)
    .replace(/^-+|-+$/g, '');
  return `${words || 'guitar'}-${changedAt.slice(0, 10)}`;
}

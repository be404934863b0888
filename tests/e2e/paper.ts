/** Page objects of a PDF (ISO 32000: a page's dictionary says /Type /Page). */
export const pagesOf = (pdf: Buffer): number =>
  [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;

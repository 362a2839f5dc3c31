import type { Palette } from '../palette.ts';
import type { CheckReport } from './report.ts';

export const CHECK_FORMATS = ['text', 'json', 'sarif', 'junit', 'github', 'markdown'] as const;
export type CheckFormat = (typeof CHECK_FORMATS)[number];

/** The findings of a check in a format, in pieces; only the text for people takes colour. */
export async function renderCheck(format: CheckFormat, report: CheckReport, palette?: Palette): Promise<Iterable<string>> {
  switch (format) {
    case 'text':
      return (await import('./text.ts')).checkText(report, palette);
    case 'json':
      return (await import('./json.ts')).checkJson(report);
    case 'sarif':
      return (await import('./sarif.ts')).checkSarif(report);
    case 'junit':
      return (await import('./junit.ts')).checkJunit(report);
    case 'github':
      return (await import('./github.ts')).checkGithub(report);
    case 'markdown':
      return [(await import('./markdown.ts')).checkMarkdown(report)];
  }
}

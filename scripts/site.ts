/** The site: guides, figures, reference and page in one static folder that works from disk. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  Application,
  type DocumentReflection,
  PackageJsonReader,
  type ProjectReflection,
  ReflectionKind,
  TSConfigReader,
} from 'typedoc';
import { chapters } from './chapters.js';
import { filesUnder } from './files.js';
import { writePage } from './page.js';

/** A link in the frame of every page, written for the root of the site: rewritten for each page by its depth. */
const fromRoot = 'site:';

/** The pages in addition to the reference, in the order in which they are read. */
const documents = [
  'docs/guide/README.md',
  ...readdirSync('docs/guide')
    .filter((file) => /^\d\d-.*\.md$/.test(file))
    .sort()
    .map((file) => `docs/guide/${file}`),
  ...['questions', 'spec', 'studies', 'choosing', 'gvwr-gawr-tongue'].map((name) => `docs/guide/${name}.md`),
  'docs/architecture.md',
  'docs/sources.md',
];

const titleOf = (markdown: string): string => /^# (.*)$/m.exec(markdown)?.[1] ?? '';

/** Documents are named after their files; a reader wants their titles. */
function nameDocuments(project: ProjectReflection): void {
  for (const each of project.getReflectionsByKind(ReflectionKind.Document)) {
    const document = each as DocumentReflection;
    const file = documents.find((path) => path.endsWith(`/${document.name}.md`));
    const title = file === undefined ? '' : titleOf(readFileSync(file, 'utf8'));
    if (title !== '') document.name = title;
  }
}

function relink(folder: string): void {
  for (const file of filesUnder(folder, '.html')) {
    const path = join(folder, file);
    const text = readFileSync(path, 'utf8');
    const up = '../'.repeat(file.split('/').length - 1);
    if (text.includes(fromRoot)) writeFileSync(path, text.replaceAll(fromRoot, up));
  }
}

/** Builds it into a folder; false where a comment or a link is wrong. */
export async function buildSite(folder: string): Promise<boolean> {
  const app = await Application.bootstrapWithPlugins(
    {
      out: folder,
      entryPoints: chapters.map(({ file }) => file),
      sortEntryPoints: false,
      readme: 'README.md',
      projectDocuments: documents,
      searchInDocuments: true,
      searchInComments: true,
      navigationLinks: { 'Try it': `${fromRoot}page/index.html` },
      customCss: 'scripts/site.css',
    },
    [new PackageJsonReader(), new TSConfigReader()],
  );
  const project = await app.convert();
  if (project === undefined) return false;
  nameDocuments(project);
  app.validate(project);
  await app.generateOutputs(project);
  if (app.logger.hasErrors() || app.logger.hasWarnings()) return false;
  await writePage(join(folder, 'page'));
  relink(folder);
  return true;
}

import type { WorkView } from '../../engine/answer/decision.ts';
import type { JobFacts } from '../../engine/scenario/inputs/scenario.ts';
import { number, weekends } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { cautionWords, DEFER } from '../words/cautions.ts';
import { noticesAt } from '../words/facts.ts';
import { capital, listed } from '../words/sentence.ts';
import { block, type Chapter, type Page, paragraphs } from './page.ts';

const terms = ({ d, format }: Page, index: number): string => {
  const value = (what: string): number | undefined =>
    d.quantities.find((q) => q.key === `workNeeded.${index}.${what}`)?.value;
  const [parts, hours, shop] = [value('parts'), value('hours'), value('shopPrice')];
  const own = d.facts.jobs[index]?.qualifiedOnly
    ? []
    : [
        ...(parts === undefined ? [] : [`${format.money(parts)} in parts`]),
        ...(hours === undefined ? [] : [`${number(hours, 1)} own hours (${weekends(hours)})`]),
      ];
  const there = shop === undefined ? '' : `${own.length === 0 ? '' : '; '}${format.money(shop)} at a shop`;
  return own.length === 0 && there === '' ? '' : `${capital(listed(own))}${there}.`;
};

const DRIVEN: Readonly<Record<WorkView['mayBeDriven'], string>> = {
  yes: '',
  to_the_shop: 'Undone, it is driven to the shop and no farther.',
  no: 'Undone, it is not driven.',
};

/** Why it is safe to leave, or is not, as the household has it. */
const whyWords = ({ safety, why }: WorkView): string => {
  if (why === '') return '';
  if (safety === 'no') return `Said to be safe to drive until then: ${ended(why)}`;
  return safety === 'yes' ? `Not safe to drive until then: ${ended(why)}` : ended(capital(why));
};

const ended = (words: string): string => (/[.!?]$/.test(words) ? words : `${words}.`);

const remarks = ({ d, format }: Page, job: JobFacts, index: number): string =>
  [
    ...d.work.slice(index, index + 1).flatMap((view) => [DRIVEN[view.mayBeDriven], whyWords(view)]),
    job.someoneElsePays === '' ? '' : `Does somebody else pay? ${capital(job.someoneElsePays)}.`,
    job.alreadySpent > 0 ? `Already spent on it, doesn't count: ${format.money(job.alreadySpent)}.` : '',
  ]
    .filter((s) => s !== '')
    .join(' ');

const jobBlock = (page: Page, job: JobFacts, index: number): Html => {
  const dangers = page.d.cautions.find((c) => c.job === job.name)?.dangers ?? job.dangers;
  return block(
    html`<h3>${capital(job.name)}</h3>`,
    html`<p>${terms(page, index)} ${remarks(page, job, index)}</p>`,
    dangers.length === 0
      ? null
      : html`<ul class="note care" aria-label="Take care: ${job.name}">${dangers.map((danger) => html`<li><b>${capital(danger.replace('-', ' '))}</b> ${cautionWords[danger]}</li>`)}</ul>`,
  );
};

/** The work it needs, job by job, with what to take care of beside each. */
export const workChapter = (page: Page): Chapter => {
  const { jobs } = page.d.facts;
  return {
    id: 'work',
    question: 'What does the work ask of us?',
    body: html`${block(
      html`<p>${jobs.length === 0 ? 'It needs no work now.' : `It needs: ${jobs.map((j) => j.name).join('; ')}.`} ${jobs.length > 0 && DEFER}</p>`,
      paragraphs(noticesAt(page.d, 'work')),
    )}${jobs.map((job, i) => jobBlock(page, job, i))}`,
  };
};

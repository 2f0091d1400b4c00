/** What Quartz reads. Everything given may be missing: then it is derived or guessed. */
export const quartzReads = {
  nominal: 'plan.nominal?',
  marking: 'plan.marking?',
  holder: 'quartz.holder',
  fs: 'quartz.fsGiven?',
  lm: 'quartz.lmGiven?',
  cm: 'quartz.cmGiven?',
  rm: 'quartz.rmGiven?',
  qu: 'quartz.quGiven?',
  c0: 'quartz.c0Given?',
  fp: 'quartz.fpGiven?',
} as const;

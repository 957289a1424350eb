// One thing that a sentence about the work tells, where it stands and what is counted in it.

import type { Token } from '../text/token.ts';
import type { Told } from './work-forms.ts';

export interface Event {
  readonly told: Told;
  readonly start: number;
  readonly end: number;
  readonly count?: number;
  readonly of?: number;
  readonly slashed?: true; // 9/12
  readonly fraction?: string;
  readonly kind?: Token;
  readonly all?: true;
  readonly spares?: number;
  readonly comma?: true;
  readonly soft?: true; // "now", which says the whole only beside another count
  readonly soFar?: true; // "30 done now"
  readonly fresh?: true; // "three new ones"
  readonly more?: true; // "another dozen"
  readonly behind?: true; // a word of loss that can only stand behind its count
  readonly doubtful?: true; // "that's 24": the whole so far only beside a word of finishing
}

/** Everything that a check asks, in the order that findings of one severity stand in. A new judge adds its questions here. */

import { balanceQuestions } from "./balance.js";
import { depthQuestions } from "./depth.js";
import { presentationQuestions } from "./presentation.js";
import type { Question } from "./question.js";
import { ruleQuestions } from "./rule-facts.js";
import type { Rules } from "./rules.js";
import { strengthQuestions } from "./strength.js";

export function questionsUnder(rules: Rules | undefined): readonly Question[] {
  return [
    ...ruleQuestions(rules),
    ...balanceQuestions,
    ...depthQuestions,
    ...strengthQuestions,
    ...presentationQuestions,
  ];
}
